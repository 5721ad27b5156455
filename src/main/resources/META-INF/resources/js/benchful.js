// Small behaviours attached by data attributes; every page works without them.

// data-recompute: a form that shows its result at once when a field changes, in place of the part marked data-replaced.
// An answer that a later change has overtaken is dropped; one that comes while a field is being typed into waits for its end.
let latest = 0;
const written = form => new URLSearchParams(new FormData(form)).toString();
async function recompute(form) {
  const turn = ++latest;
  const sent = written(form);
  form.setAttribute('aria-busy', 'true');
  const answer = await fetch(form.action, {method: 'POST', body: new URLSearchParams(sent)});
  const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
  const fresh = page.querySelector('[data-replaced]');
  if (turn === latest && written(form) !== sent) await new Promise(done => form.addEventListener('focusout', done, {once: true}));
  if (turn !== latest || written(form) !== sent) return;
  if (!fresh) return form.submit();
  const field = document.activeElement?.id;
  document.querySelector('[data-replaced]').replaceWith(fresh);
  if (answer.redirected) history.replaceState(null, '', answer.url);
  const again = field && document.getElementById(field);
  again?.focus();
  again?.select?.();
}
document.addEventListener('change', event => {
  const form = event.target.closest?.('form[data-recompute]');
  if (form?.reportValidity()) recompute(form).catch(() => form.submit());
});

// data-awaited: long work under way; the part marked data-replaced is fetched anew every second until it is done.
async function keepAsking() {
  if (!document.querySelector('[data-awaited]')) return;
  const answer = await fetch(location.href);
  const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
  const fresh = page.querySelector('[data-replaced]');
  if (!answer.ok || !fresh) return location.reload();
  document.querySelector('[data-replaced]').replaceWith(fresh);
  setTimeout(keepAsking, 1000);
}
setTimeout(keepAsking, 1000);

// The summary of faults takes the focus, so that a screen reader starts there.
document.querySelector('.summary[role=alert]')?.focus();
