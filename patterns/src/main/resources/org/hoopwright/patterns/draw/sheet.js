
"use strict";
(() => {
  const page = document;
  const find = (id) => page.getElementById(id);
  const items = Array.from(page.querySelectorAll("#steps li"));
  const boxes = items.map((li) => li.querySelector("input"));
  const states = ["open", "laced", "pulled", "laid", "on", "off", "now"];
  const parts = Array.from(page.querySelectorAll("[data-states]")).map((el) => ({
    el,
    base: el.getAttribute("class").split(" ").filter((c) => !states.includes(c)),
    changes: el.dataset.states.split(" ").filter(Boolean).map((c) => {
      const [step, state] = c.split(":");
      return { step: Number(step), state };
    }),
    now: el.dataset.now.split(" ").filter(Boolean).map(Number),
  }));
  const key = "bench sheet " + page.title + " " + items.length;
  const factors = { N: 1, lbf: 4.4482216152605, kgf: 9.80665 };
  let at = 0;

  function draw(step) {
    const until = step === 0 ? items.length : step;
    for (const part of parts) {
      let state = "off";
      for (const change of part.changes) {
        if (change.step <= until) {
          state = change.state;
        }
      }
      const now = step > 0 && part.now.includes(step) ? ["now"] : [];
      part.el.setAttribute("class", part.base.concat(state, now).join(" "));
    }
  }

  function show(step, scroll) {
    at = Math.max(0, Math.min(items.length, step));
    draw(at);
    items.forEach((li, i) => {
      li.classList.toggle("at", i + 1 === at);
      if (i + 1 === at) {
        li.setAttribute("aria-current", "step");
      } else {
        li.removeAttribute("aria-current");
      }
    });
    const say = find("say");
    say.textContent = "";
    if (at === 0) {
      find("count").textContent = "Overview of " + items.length + " steps";
      say.textContent = "Press Next, or the right arrow key, for the first step.";
    } else {
      find("count").textContent = "Step " + at + " of " + items.length;
      say.append(...items[at - 1].querySelector(".say").cloneNode(true).childNodes);
      if (scroll) {
        items[at - 1].scrollIntoView({ block: "nearest" });
      }
    }
    find("back").disabled = at === 0;
    find("next").disabled = at === items.length;
    find("tick").disabled = at === 0;
  }

  function remember() {
    try {
      localStorage.setItem(key, boxes.map((b) => (b.checked ? "1" : "0")).join(""));
    } catch (ignored) {
      // Some browsers keep nothing for files; ticks then last as long as the page.
    }
  }

  function recall() {
    try {
      (localStorage.getItem(key) || "").split("").slice(0, boxes.length).forEach((c, i) => {
        boxes[i].checked = c === "1";
      });
    } catch (ignored) {
      // As above.
    }
  }

  function tick() {
    if (at > 0) {
      boxes[at - 1].checked = true;
      remember();
      show(at + 1, true);
    }
  }

  function switchUnits() {
    const chosen = (name) => page.querySelector("input[name=" + name + "]:checked").value;
    const force = chosen("force");
    const length = chosen("length");
    for (const q of page.querySelectorAll("[data-newtons]")) {
      const value = Number(q.dataset.newtons) / factors[force];
      q.textContent = value.toFixed(Number(q.dataset.decimals)) + " " + force;
    }
    for (const q of page.querySelectorAll("[data-mm]")) {
      const mm = Number(q.dataset.mm);
      q.textContent =
        length === "mm" ? mm.toFixed(0) + " mm" : (mm / 25.4).toFixed(mm < 1000 ? 2 : 0) + " in";
    }
  }

  const shown = (selector) => page.querySelector(selector).textContent.split(" ").pop();
  page.querySelector("input[name=force][value=" + shown("[data-newtons]") + "]").checked = true;
  page.querySelector("input[name=length][value=" + shown("[data-mm]") + "]").checked = true;
  find("units").hidden = false;
  find("controls").hidden = false;
  find("units").addEventListener("change", switchUnits);
  find("steps").addEventListener("change", remember);
  find("back").addEventListener("click", () => show(at - 1, false));
  find("next").addEventListener("click", () => show(at + 1, false));
  find("tick").addEventListener("click", tick);
  page.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.target.type === "radio") {
      return;
    }
    const moves = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: items.length };
    if (event.key in moves) {
      event.preventDefault();
      show(moves[event.key], false);
    } else if (event.key === "t") {
      tick();
    }
  });
  addEventListener("beforeprint", () => draw(0));
  addEventListener("afterprint", () => draw(at));
  recall();
  show(0, false);
})();
