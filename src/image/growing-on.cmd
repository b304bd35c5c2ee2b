@echo off
rem Starts the planner with the runtime of this folder; no Java need be installed.
rem Drop a nursery folder, a plan or a workbook on this file and it is planned.
rem In a folder made on another system the computer's own Java, 17 or newer, is used.
setlocal
set "here=%~dp0"
set "what="
if not "%~1"=="" if "%~2"=="" if exist "%~1" set "what=plan"
if exist "%here%growing-on.exe" (
  "%here%growing-on.exe" %what% %*
) else if exist "%here%app\growing-on.jar" (
  java -jar "%here%app\growing-on.jar" %what% %*
) else (
  java -jar "%here%lib\app\growing-on.jar" %what% %*
)
set "ended=%errorlevel%"
if defined what pause
exit /b %ended%
