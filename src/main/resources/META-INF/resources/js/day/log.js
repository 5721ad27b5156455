// All taps of a class that this browser knows of, its own and those of other devices, in the browser's own database: they outlive a
// reload, a crash and a flat battery. A tap counts as sent only once the program has shown it in its log.
const NAME = 'benchful-day';

const done = request => new Promise((resolve, reject) => {
  request.onsuccess = () => resolve(request.result);
  request.onerror = () => reject(request.error);
});

async function database() {
  const opening = indexedDB.open(NAME, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore('taps', {keyPath: ['class', 'id']});
  return done(opening);
}

export class Log {
  #class;
  #database;
  #taps = new Map();

  static async of(id) {
    const log = new Log();
    log.#class = id;
    try {
      log.#database = await database();
      const all = IDBKeyRange.bound([id], [id, []]);
      (await done(log.#database.transaction('taps').objectStore('taps').getAll(all))).forEach(tap => log.#taps.set(tap.id, tap));
    } catch { /* The browser keeps nothing; the open page still does. */ }
    return log;
  }

  get all() { return [...this.#taps.values()]; }
  get unsent() { return this.all.filter(tap => !tap.sent); }

  // Kept before anything is shown of it.
  add(tap) { return this.#put([{...tap, class: this.#class, sent: false}]); }

  // What the program shows in its log has arrived.
  arrived(taps) {
    return this.#put(taps.filter(tap => !this.#taps.get(tap.id)?.sent).map(tap => ({...tap, class: this.#class, sent: true})));
  }

  async #put(taps) {
    taps.forEach(tap => this.#taps.set(tap.id, tap));
    if (!taps.length || !this.#database) return;
    const writing = this.#database.transaction('taps', 'readwrite', {durability: 'strict'});
    taps.forEach(tap => writing.objectStore('taps').put(tap));
    await new Promise((resolve, reject) => { writing.oncomplete = resolve; writing.onerror = writing.onabort = () => reject(writing.error); });
  }
}
