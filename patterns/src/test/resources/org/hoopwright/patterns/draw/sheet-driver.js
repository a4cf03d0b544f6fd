(() => {
  const lines = [];
  const id = (name) => document.getElementById(name);
  const count = () => id("count").textContent;
  const press = (key) =>
    document.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
  const choose = (value) => document.querySelector("input[value=" + value + "]").click();
  lines.push("start=" + count());
  press("ArrowRight");
  press("ArrowRight");
  lines.push("right right=" + count());
  press("ArrowRight");
  lines.push("L1 at 3=" + id("span-L1").getAttribute("class"));
  lines.push("X1 at 3=" + id("span-X1").getAttribute("class"));
  press("ArrowLeft");
  press("ArrowLeft");
  lines.push("left=" + count());
  press("End");
  lines.push("end=" + count());
  press("ArrowRight");
  lines.push("past the end=" + count());
  press("Home");
  lines.push("home=" + count());
  id("next").click();
  id("tick").click();
  lines.push("ticked=" + document.querySelector("#step-1 input").checked + " then " + count());
  const force = document.querySelector("[data-newtons]");
  const length = document.querySelector("[data-mm]");
  for (const unit of ["lbf", "N", "kgf"]) {
    choose(unit);
    lines.push(unit + "=" + force.textContent);
  }
  for (const unit of ["mm", "in"]) {
    choose(unit);
    lines.push(unit + "=" + length.textContent);
  }
  done(lines.join("\n"));
})();
