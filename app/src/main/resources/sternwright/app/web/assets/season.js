// Takes hold of a mark on the season's board, by mouse or by keyboard, and leads to the page that says what would move.
(() => {
  const DAY = 86400000;
  let held = null;

  const board = el => el && el.closest ? el.closest(".season-board[data-move]") : null;
  const visit = mark => mark.parentNode.dataset;
  const iso = t => new Date(t).toISOString().slice(0, 10);
  const spoken = day => new Intl.DateTimeFormat(document.documentElement.lang,
    {weekday: "short", day: "numeric", month: "long", year: "numeric", timeZone: "UTC"}).format(new Date(day + "T00:00Z"));

  function perDay(svg) {
    const d = svg.dataset;
    return Number(d.width) / ((Date.parse(d.to) - Date.parse(d.from)) / DAY + 1);
  }

  function say(words) {
    const status = board(held.mark).querySelector(".dragged");
    status.textContent = words.replace("%what", held.mark.dataset.operation).replace("%boat", visit(held.mark).name)
      .replace("%day", spoken(day()));
  }

  function day() {
    return iso(Date.parse(held.mark.dataset.day) + held.days * DAY);
  }

  function take(mark) {
    letGo();
    held = {mark, days: 0, svg: mark.ownerSVGElement};
    mark.classList.add("b-taken");
    say(board(mark).dataset.words);
  }

  function set(days) {
    held.days = days;
    held.mark.setAttribute("transform", "translate(" + (days * perDay(held.svg)).toFixed(1) + " 0)");
    say(board(held.mark).dataset.words);
  }

  function letGo() {
    if (!held) return;
    held.mark.classList.remove("b-taken");
    held.mark.removeAttribute("transform");
    board(held.mark).querySelector(".dragged").textContent = "";
    held = null;
  }

  function ask() {
    const v = visit(held.mark);
    const to = new URL(board(held.mark).dataset.move, location.href);
    to.search = new URLSearchParams({boat: v.boat, visit: v.visit, operation: held.mark.dataset.operation, to: day()});
    const moved = held.days !== 0;
    letGo();
    if (moved) location.assign(to);
  }

  document.addEventListener("pointerdown", e => {
    const mark = e.pointerType !== "touch" && e.button === 0 && e.target.closest ? e.target.closest(".b-held") : null;
    if (!mark || !board(mark)) return;
    e.preventDefault();
    take(mark);
    const box = held.svg.getBoundingClientRect();
    held.px = perDay(held.svg) * box.width / held.svg.viewBox.baseVal.width;
    held.x = e.clientX;
  });
  document.addEventListener("pointermove", e => {
    if (held && held.x !== undefined) {
      const days = Math.round((e.clientX - held.x) / held.px);
      if (days !== held.days) set(days);
    }
  });
  document.addEventListener("pointerup", () => {
    if (held && held.x !== undefined) ask();
  });
  document.addEventListener("pointercancel", () => {
    if (held && held.x !== undefined) letGo();
  });

  function marksOf(link) {
    const id = decodeURIComponent(link.getAttribute("href").split("/").pop());
    return [...board(link).querySelectorAll(".b-held")].filter(m => visit(m).boat === id);
  }

  document.addEventListener("keydown", e => {
    const link = e.target.closest ? e.target.closest(".names a") : null;
    if (!link || !board(link)) return;
    const step = e.key === "ArrowRight" ? 1 : e.key === "ArrowLeft" ? -1 : 0;
    if (step && e.shiftKey && held) {
      set(held.days + step);
    } else if (step && !e.shiftKey) {
      const marks = marksOf(link);
      if (marks.length === 0) return;
      const at = held ? marks.indexOf(held.mark) : step > 0 ? -1 : 0;
      take(marks[(at + step + marks.length) % marks.length]);
    } else if (e.key === "Enter" && held && held.days !== 0) {
      ask();
    } else if (e.key === "Escape" && held) {
      letGo();
    } else {
      return;
    }
    e.preventDefault();
  });
  document.addEventListener("focusout", e => {
    if (held && held.x === undefined && e.target.closest(".names a")) letGo();
  });
})();
