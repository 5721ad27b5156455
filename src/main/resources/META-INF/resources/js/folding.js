// On a phone a page longer than six screens opens folded: each heading is a line that opens what stands below it, and of a list
// that is still too long the rest waits behind a button (all but three, or data-least). What holds a fault, is asked for by the address or
// answers what the page is for (data-unfolded) stays open.
const LONGEST = 4850;
const LEAST = 3;
const LISTS = 'main :is(tbody, ul, ol, dl, form, section, div, fieldset)';
const ROWS = ':is(tr, li, section, details, fieldset, article)';
const narrow = matchMedia('(max-width: 44rem)');
const tooLong = () => narrow.matches && document.documentElement.scrollHeight > LONGEST;
const asked = part => location.hash.length > 1 && part.querySelector(`#${CSS.escape(location.hash.slice(1))}`);
const urgent = part => part.querySelector('.faulty, [aria-invalid], [role=alert], [autofocus]');

function wrap(heading) {
  const part = document.createElement('details');
  part.className = 'folded';
  heading.before(part);
  part.appendChild(document.createElement('summary')).append(heading);
  let below;
  while ((below = part.nextElementSibling) && below.tagName !== 'H2' && !below.querySelector(':scope > h2') && !below.matches('.actions, section')) part.append(below);
  part.open = Boolean(asked(part) || urgent(part));
}

function shorten(list, rows) {
  const rest = rows.slice(list.dataset.least ?? LEAST).filter(row => !asked(row) && !urgent(row)).reverse();
  const hidden = rest.filter(row => tooLong() && (row.hidden = true));
  if (!hidden.length) return;
  const more = document.createElement('p');
  more.className = 'actions';
  const button = Object.assign(document.createElement('button'), {type: 'button', textContent: `Show the other ${hidden.length}`});
  button.addEventListener('click', () => {
    hidden.forEach(row => { row.hidden = false; });
    more.remove();
    hidden.at(-1).querySelector('a, summary, input, button')?.focus();
  });
  more.append(button);
  (list.closest('table') ?? rows.at(-1)).after(more);
}

const rowsOf = list => [...list.querySelectorAll(`:scope > ${ROWS}`)].filter(row => row.checkVisibility());

function fold() {
  if (!tooLong()) return;
  const headings = [...document.querySelectorAll('main h2')].filter(h => !h.closest('details, li, .panel, .summary, .card, header, [data-unfolded]'));
  if (headings.length > 1) headings.forEach(wrap);
  const lists = tooLong() ? [...document.querySelectorAll(LISTS)] : [];
  lists.map(list => [list, rowsOf(list)]).filter(([, rows]) => rows.length > LEAST)
      .sort(([a], [b]) => b.offsetHeight - a.offsetHeight).forEach(([list, rows]) => tooLong() && shorten(list, rows));
}

// A link into a folded part opens it.
const open = id => {
  for (let part = document.getElementById(id)?.closest('details'); part; part = part.parentElement.closest('details')) part.open = true;
};
document.addEventListener('click', event => {
  const link = event.target.closest?.('a[href^="#"]');
  if (link) open(link.hash.slice(1));
});

fold();
addEventListener('load', fold);
new MutationObserver(changes => {
  if (changes.some(change => [...change.addedNodes].some(node => node.matches?.('[data-replaced]')))) fold();
}).observe(document.querySelector('main'), {childList: true});
