(function () {
  "use strict";
  var words = function (cell) { return cell.textContent.trim(); };
  var key = function (cell) {
    if (cell.dataset.s) { return cell.dataset.s; }
    return words(cell);
  };
  var number = function (text) {
    var digits = text.replace(/[^0-9.\-]/g, "");
    return digits === "" || digits === "-" ? (text === "" ? null : 0) : parseFloat(digits);
  };
  var compare = function (a, b) { return a < b ? -1 : a > b ? 1 : 0; };
  function sort(table, index, heading) {
    var down = heading.getAttribute("aria-sort") === "ascending";
    var body = table.tBodies[0];
    var numeric = heading.classList.contains("n");
    var rows = Array.prototype.map.call(body.rows, function (row, at) {
      var value = key(row.cells[index]);
      return { row: row, at: at, value: numeric ? number(value) : value.toLowerCase() };
    });
    var empty = function (value) { return value === null || value === ""; };
    rows.sort(function (a, b) {
      if (empty(a.value) || empty(b.value)) { return empty(a.value) - empty(b.value) || a.at - b.at; }
      return (down ? -1 : 1) * compare(a.value, b.value) || a.at - b.at;
    });
    rows.forEach(function (each) { body.appendChild(each.row); });
    Array.prototype.forEach.call(table.tHead.rows[0].cells, function (cell) { cell.removeAttribute("aria-sort"); });
    heading.setAttribute("aria-sort", down ? "descending" : "ascending");
  }
  function filter(table, typed, said) {
    var wanted = typed.trim().toLowerCase();
    var shown = 0;
    Array.prototype.forEach.call(table.tBodies[0].rows, function (row) {
      var fits = wanted === "" || row.textContent.toLowerCase().indexOf(wanted) >= 0;
      row.hidden = !fits;
      shown += fits ? 1 : 0;
    });
    var all = table.tBodies[0].rows.length;
    said.textContent = wanted === "" ? all + " rows" : shown + " of " + all + " rows";
    if (table.tFoot) {
      table.tFoot.rows[0].cells[0].textContent = wanted === "" ? "Total" : "Total of all rows";
    }
  }
  function sortable(table) {
    Array.prototype.forEach.call(table.tHead.rows[0].cells, function (heading, index) {
      // The heading's text stays outside the button: browsers leave buttons out of repeated headings in print.
      var button = document.createElement("button");
      button.type = "button";
      button.setAttribute("aria-label", "Sort by " + words(heading));
      heading.classList.add("sorts");
      heading.appendChild(button);
      heading.addEventListener("click", function () { sort(table, index, heading); });
    });
  }
  function filterable(table) {
    var box = document.createElement("div");
    box.className = "filter";
    var label = document.createElement("label");
    var input = document.createElement("input");
    var said = document.createElement("span");
    label.textContent = "Show rows with ";
    input.type = "search";
    input.setAttribute("aria-label", "Show rows of " + words(table.caption) + " with");
    said.setAttribute("role", "status");
    said.setAttribute("aria-live", "polite");
    said.setAttribute("aria-atomic", "true");
    label.appendChild(input);
    box.appendChild(label);
    box.appendChild(said);
    table.parentNode.parentNode.insertBefore(box, table.parentNode);
    input.addEventListener("input", function () { filter(table, input.value, said); });
    filter(table, "", said);
  }
  function all(open) {
    document.querySelectorAll("details.sheet").forEach(function (each) { each.open = open; });
  }
  function openTarget() {
    var target = location.hash && document.getElementById(decodeURIComponent(location.hash.slice(1)));
    var sheet = target && target.closest("details");
    if (sheet) {
      sheet.open = true;
      target.scrollIntoView();
    }
  }
  document.querySelectorAll("table").forEach(function (table) {
    if (table.tBodies[0].rows.length > 1) { sortable(table); }
    if (table.tBodies[0].rows.length > 8) { filterable(table); }
  });
  document.querySelectorAll(".tools").forEach(function (tools) {
    [["Open all tables", true], ["Close all tables", false]].forEach(function (each) {
      var button = document.createElement("button");
      button.type = "button";
      button.textContent = each[0];
      button.addEventListener("click", function () { all(each[1]); });
      tools.appendChild(button);
    });
  });
  window.addEventListener("hashchange", openTarget);
  openTarget();
})();
