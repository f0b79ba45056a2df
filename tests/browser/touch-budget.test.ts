import { test as base, expect } from '@playwright/test';
import { type BenchScreen, benchScreens, goToBench, openShop, turnInto } from './support/bench-walk.ts';
import { type Box, type Control, type Look, landingsOf } from './support/gloved-thumb.ts';
import { type Contrast, contrastsOf, lookAt } from './support/screen-look.ts';

const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, locale: 'en-US' };
const phones = [
  { width: 320, height: 568 },
  { width: 360, height: 740 },
  { width: 412, height: 915 },
];
/** Where keys have the least room. */
const lowPhones = [
  { width: 320, height: 568 },
  { width: 360, height: 640 },
];

interface Seen {
  screen: BenchScreen;
  phones: { width: number; height: number; look: Look }[];
  contrasts: { light: Contrast[]; dark: Contrast[] };
}

/** Every screen of the bench on every phone, walked once for all tests of this file. */
const test = base.extend<object, { walked: Seen[] }>({
  walked: [
    async ({ browser }, use, { project }) => {
      const page = await browser.newPage({ ...phone, baseURL: project.use.baseURL ?? '' });
      page.setDefaultTimeout(5000);
      await openShop(page);
      const walked: Seen[] = [];
      for (const screen of benchScreens) {
        await goToBench(page, screen);
        const seen: Seen = { screen, phones: [], contrasts: { light: [], dark: [] } };
        const isKeyed = screen.name.includes('keypad');
        for (const size of isKeyed ? [...phones, ...lowPhones.slice(1)] : phones) {
          await turnInto(page, size);
          seen.phones.push({ ...size, look: await lookAt(page) });
        }
        for (const theme of ['dark', 'light'] as const) {
          await page.evaluate((to) => {
            document.documentElement.dataset.theme = to;
          }, theme);
          seen.contrasts[theme] = await contrastsOf(page);
        }
        walked.push(seen);
      }
      await page.close();
      await use(walked);
    },
    { scope: 'worker', timeout: 180_000 },
  ],
});

/** Touches of each kind in the job from cloth to weighed tube, counted in its browser test. */
const touches: Record<Control['kind'], number> = { main: 114, hold: 1, key: 83, bench: 37, tab: 3 };

const each = (walked: readonly Seen[]) =>
  walked.flatMap(({ screen, phones: on }) =>
    on.map((phone) => ({ at: `${screen.name}, ${phone.width} px`, ...phone })),
  );

/** Of touches on one screen, weighted by how often each control is meant, the share on a wrong one and on none. */
function astray(look: Look, sigma: number): { wrong: number; missed: number; worst: string } {
  const { controls } = look;
  const ofKind = (kind: string) => controls.filter((c) => c.kind === kind).length;
  let [wrong, missed, all, most] = [0, 0, 0, 0];
  let worst = '';
  controls.forEach((control, i) => {
    const landed = landingsOf(look, i, sigma);
    if (!landed) return;
    const weight = touches[control.kind] / ofKind(control.kind);
    all += weight;
    wrong += weight * landed.wrong;
    missed += weight * landed.missed;
    if (landed.wrong <= most) return;
    most = landed.wrong;
    worst = control.name;
  });
  return all === 0
    ? { wrong, missed, worst }
    : { wrong: wrong / all, missed: missed / all, worst: `${worst} ${percent(most)}` };
}

const percent = (share: number) => `${(100 * share).toFixed(2)} %`;

test('on every screen of the bench a gloved thumb presses a wrong control less than once in 200 touches', ({
  walked,
}) => {
  const rates = each(walked).map(({ at, look }) => ({ at, ...astray(look, 2), far: astray(look, 4) }));
  if (process.env.PRINT_TOUCHES) {
    for (const { at, wrong, missed, worst, far } of rates) {
      const near = `2 mm: wrong ${percent(wrong)}, missed ${percent(missed)}, worst ${worst}`;
      console.log(
        `  ${at.padEnd(44)} ${near}; 4 mm: wrong ${percent(far.wrong)}, missed ${percent(far.missed)}`,
      );
    }
  }
  expect(rates.filter(({ wrong }) => wrong >= 1 / 200)).toEqual([]);
});

test('nor does any one control of it stray more often than that', ({ walked }) => {
  const often = each(walked).flatMap(({ at, look }) =>
    look.controls.flatMap(({ name }, i) => {
      const wrong = landingsOf(look, i, 2)?.wrong ?? 0;
      return wrong >= 1 / 200 ? [`${at}: ${name} ${percent(wrong)}`] : [];
    }),
  );
  expect(often).toEqual([]);
});

/** px; five places side by side on 320 px are as wide as they can be with their gaps. */
const least: Record<Control['kind'], { width: number; height: number }> = {
  key: { width: 72, height: 72 },
  main: { width: 96, height: 96 },
  hold: { width: 72, height: 96 },
  bench: { width: 64, height: 64 },
  tab: { width: 57, height: 64 },
};
const gap = 8;
/** Half a px is lost in rounding. */
const close = 0.6;

const between = (a: Box, b: Box) =>
  Math.max(
    Math.max(a.left, b.left) - Math.min(a.right, b.right),
    Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom),
  );

function tooSmall({ name, kind, left, right, top, bottom }: Control): string[] {
  const [width, height] = [right - left, bottom - top];
  const small = width < least[kind].width - close || height < least[kind].height - close;
  return small ? [`${name}: ${width.toFixed(1)} x ${height.toFixed(1)}`] : [];
}

test('every control of it is big enough for a glove and clear of its neighbors, at 320 px too', ({
  walked,
}) => {
  const wrong = each(walked).flatMap(({ at, look: { controls } }) => {
    const near = controls.flatMap((a, i) =>
      controls.slice(i + 1).flatMap((b) => {
        const apart = between(a, b);
        return a.bar === b.bar && apart < gap - close ? [`${a.name} | ${b.name}: ${apart.toFixed(1)}`] : [];
      }),
    );
    return [...controls.flatMap(tooSmall), ...near].map((what) => `${at}: ${what}`);
  });
  expect([...new Set(wrong)]).toEqual([]);
});

test('what a hand that holds the phone touches at its rim does no harm', ({ walked }) => {
  // Places, the wipe key and the strip of clocks only lead somewhere; a figure typed is seen and erased.
  const harmless = ({ name, kind, top }: Control) =>
    kind === 'key' || kind === 'tab' || name.startsWith('Wipe glass') || top < 1;
  const harmful = each(walked).flatMap(({ at, look: { width, height, controls } }) =>
    controls
      .filter(({ left, right, bottom, bar }) => {
        const low = bar !== undefined && bottom > height - gap + close;
        return left < gap - close || right > width - gap + close || low;
      })
      .filter((control) => !harmless(control))
      .map(({ name }) => `${at}: ${name}`),
  );
  expect(harmful).toEqual([]);
});

test('where figures are typed a small phone shows figure, keys and action without a scroll', ({ walked }) => {
  const keyed = walked.filter(({ screen }) => screen.name.includes('keypad'));
  const hidden = each(keyed).flatMap(({ at, look: { height, controls } }) => {
    const actions = controls.filter((c) => c.kind === 'main' || c.kind === 'hold');
    const foot = Math.min(...actions.map((c) => c.top)) - gap;
    const keys = controls.filter((c) => c.kind === 'key' && (c.top < 0 || c.bottom > foot + close));
    const out = actions.filter((c) => c.top < 0 || c.bottom > height);
    return [...keys, ...out].map(
      (c) => `${at}, ${height} px: ${c.name} ends at ${c.bottom}, room to ${foot}`,
    );
  });
  expect(hidden).toEqual([]);
  expect(keyed.length).toBeGreaterThan(10);
});

test('every text of it has the contrast that glare asks for, in light and in dark', ({ walked }) => {
  const lowest = { light: 21, dark: 21 };
  const faint = walked.flatMap(({ screen, contrasts }) =>
    (['light', 'dark'] as const).flatMap((theme) =>
      contrasts[theme].flatMap(({ ratio, large, text }) => {
        lowest[theme] = Math.min(lowest[theme], ratio);
        return ratio < (large ? 4.5 : 7) ? [`${screen.name}, ${theme}: ${ratio.toFixed(2)} ${text}`] : [];
      }),
    ),
  );
  if (process.env.PRINT_TOUCHES)
    console.log(`  lowest contrast: ${lowest.light.toFixed(2)} in light, ${lowest.dark.toFixed(2)} in dark`);
  expect(faint).toEqual([]);
  expect(walked.every(({ contrasts }) => contrasts.light.length > 0)).toBe(true);
});
