// What was ticked and is not known to be kept yet, by box and material. It outlives the page: what could not be sent is there
// again when the page is opened next.
export class Waiting {
  #name;
  #ticks;

  constructor(name) {
    this.#name = `ticks ${name}`;
    this.#ticks = new Map(JSON.parse(localStorage.getItem(this.#name) ?? '[]'));
  }

  get size() { return this.#ticks.size; }
  get all() { return new Map(this.#ticks); }
  has(key) { return this.#ticks.has(key); }
  get(key) { return this.#ticks.get(key); }

  set(key, ticked) {
    this.#ticks.set(key, ticked);
    this.#store();
  }

  // What was kept is done with, unless it was ticked otherwise since.
  kept(sent) {
    for (const [key, ticked] of sent) if (this.#ticks.get(key) === ticked) this.#ticks.delete(key);
    this.#store();
  }

  // On a page that was opened anew. What stands there already was kept after all; what it has no box for is packed no more.
  putInto(boxes) {
    this.kept([...this.#ticks].filter(([key, ticked]) => !boxes.has(key) || boxes.get(key).checked === ticked));
    for (const [key, ticked] of this.#ticks) boxes.get(key).checked = ticked;
  }

  #store() {
    try {
      if (this.size) localStorage.setItem(this.#name, JSON.stringify([...this.#ticks]));
      else localStorage.removeItem(this.#name);
    } catch { /* The browser keeps nothing; the open page still does. */ }
  }
}
