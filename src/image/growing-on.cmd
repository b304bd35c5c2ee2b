@echo off
rem Starts the planner with the runtime of this folder; no Java need be installed.
rem Drop a nursery folder, a plan or a workbook on this file and it is planned.
rem In a folder made on another system the computer's own Java, 17 or newer, is used.
setlocal DisableDelayedExpansion
set "here=%~dp0"
set "jar=%here%app\growing-on.jar"
if not exist "%jar%" set "jar=%here%lib\app\growing-on.jar"
set "what="
set "given=%~1"
if defined given if "%~2"=="" if exist "%given%" set "what=plan"
rem A backslash before the closing quote would be read as part of the name.
if defined what if "%given:~-1%"=="\" set "given=%given:~0,-1%"
rem Names and signs are told in UTF-8; the terminal gets its own code page back.
set "page="
for /f "tokens=2 delims=:" %%p in ('chcp') do set "page=%%p"
if defined page set "page=%page:.=%"
chcp 65001 >nul
rem No brackets around these lines: a name such as nursery(1).xlsx comes unquoted and would close them.
if exist "%here%growing-on.exe" goto own
if defined what java -jar "%jar%" plan "%given%"
if not defined what java -jar "%jar%" %*
goto end
:own
if defined what "%here%growing-on.exe" plan "%given%"
if not defined what "%here%growing-on.exe" %*
:end
set "ended=%errorlevel%"
if defined page chcp %page% >nul
if defined what pause
exit /b %ended%
