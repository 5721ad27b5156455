// Small behaviours attached by data attributes; every page works without them.

// data-recompute: a form that shows its result afresh when a field changes.
for (const form of document.querySelectorAll('form[data-recompute]')) {
  form.addEventListener('change', () => form.requestSubmit());
}

// data-confirm: asks once before something is removed.
document.addEventListener('submit', event => {
  const question = event.submitter?.dataset.confirm;
  if (question && !window.confirm(question)) event.preventDefault();
});

// The summary of faults takes the focus, so that a screen reader starts there.
document.querySelector('.summary[role=alert]')?.focus();
