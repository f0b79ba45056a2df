/** What the key does to the main action of a screen; one that has to be held is let go again. */
interface Press {
  down: () => unknown;
  up?: () => unknown;
}

interface Claim extends Press {
  /** Where it lies, so that a question in front of the screen comes before the screen. */
  place: () => Element | null;
}

/** The main actions on the screen, newest last; a wireless button or foot switch presses the newest. */
const claims: Claim[] = [];

export function claimMainKey(claim: Claim): () => void {
  claims.push(claim);
  return () => {
    const at = claims.indexOf(claim);
    if (at >= 0) claims.splice(at, 1);
  };
}

/** Behind a sheet no action may be pressed unseen; what is pressed comes before what is held. */
function mainAction(): Claim | undefined {
  const sheet = [...document.querySelectorAll('dialog[open]')].at(-1);
  const inReach = claims.filter(({ place }) => !sheet || sheet.contains(place()));
  return inReach.filter(({ up }) => !up).at(-1) ?? inReach.at(-1);
}

const writesText = (target: EventTarget | null) =>
  target instanceof Element && target.matches('input, select, textarea, [contenteditable]');
const isControl = (target: EventTarget | null) =>
  target instanceof Element && target.matches('button, a[href], summary, [tabindex="0"]');

/**
 * Page down always means the main action. Enter and space mean it too, unless they belong to a control that was
 * reached by keyboard: one that a thumb touched keeps the focus, and a foot switch must not press it once more.
 */
export function listenForMainKey(): void {
  let byTouch = true;
  let held: Claim | undefined;
  addEventListener(
    'pointerdown',
    () => {
      byTouch = true;
    },
    true,
  );
  const pressed = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const { key, target } = event;
    if (key === 'Tab' || key.startsWith('Arrow')) byTouch = false;
    const presses = key === 'Enter' || key === ' ';
    if (key !== 'PageDown' && !presses) return;
    if (presses && writesText(target)) return;
    // Held down, a browser would press a focused control again and again.
    if (event.repeat) {
      event.preventDefault();
      return;
    }
    if (presses && isControl(target) && !byTouch) return;
    const main = mainAction();
    if (!main) return;
    event.preventDefault();
    event.stopPropagation();
    held = main;
    main.down();
  };
  const released = (event: KeyboardEvent) => {
    if (!held || (event.key !== 'PageDown' && event.key !== 'Enter' && event.key !== ' ')) return;
    // Some browsers press a button as the space bar comes up.
    event.preventDefault();
    held.up?.();
    held = undefined;
  };
  addEventListener('keydown', pressed, true);
  addEventListener('keyup', released, true);
}
