/** The main actions on the screen, newest last; a wireless button or foot switch presses the newest. */
const claims: (() => unknown)[] = [];

export function claimMainKey(press: () => unknown): () => void {
  claims.push(press);
  return () => {
    const at = claims.lastIndexOf(press);
    if (at >= 0) claims.splice(at, 1);
  };
}

/** Enter and space belong to whatever control has the focus; only when none has do they mean the main action. */
export function listenForMainKey(): void {
  addEventListener('keydown', (event) => {
    if (event.repeat || event.ctrlKey || event.altKey || event.metaKey) return;
    const free = event.target === document.body || (event.target as HTMLElement).tagName === 'H1';
    const means = event.key === 'PageDown' || (free && (event.key === 'Enter' || event.key === ' '));
    const press = claims.at(-1);
    if (!means || !press) return;
    event.preventDefault();
    press();
  });
}
