// How far this device's clock is off, by the time that the program says in its answers. Of all answers the quickest is believed, since
// it leaves least open; another only where the clock must have been put right since. What is known outlives a reload.
const NAME = 'benchful-clock';
const WORTH_CORRECTING = 5000;
const FAR = 60000;

export class Clock {
  #off = 0;
  #open = Infinity;

  constructor() {
    try { this.#off = Number(localStorage.getItem(NAME)) || 0; } catch { /* The browser keeps nothing; the next answer tells. */ }
  }

  // What is to be added to this device's time, in milliseconds; nothing where it hardly matters.
  get off() { return Math.abs(this.#off) < WORTH_CORRECTING ? 0 : this.#off; }
  get known() { return this.#open < Infinity; }
  get now() { return Date.now() + this.off; }

  // The program said its time somewhen between these two moments of this device.
  heard(time, from, to) {
    const off = Math.round(time - (from + to) / 2);
    const open = (to - from) / 2;
    if (!(open <= this.#open || Math.abs(off - this.#off) > open + this.#open + 1000)) return;
    this.#off = off;
    this.#open = open;
    try { localStorage.setItem(NAME, String(off)); } catch { /* Known as long as the page is open. */ }
  }

  get words() {
    const minutes = Math.round(Math.abs(this.#off) / 60000);
    const far = minutes < 120 ? `${minutes} min` : `${Math.round(minutes / 60)} h`;
    return Math.abs(this.#off) < FAR ? '' : `This device’s clock is ${far} ${this.#off > 0 ? 'slow' : 'fast'} against Benchful’s. What you tap is kept at the right time, and the times shown are right.`;
  }
}
