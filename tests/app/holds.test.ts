import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const app = new URL('../../src/app/', import.meta.url).pathname;
const screens = readdirSync(app, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.tsx') && name !== 'parts/hold-action.tsx')
  .map((name) => ({ name, text: readFileSync(join(app, name), 'utf8') }));

/** Every act that a stray touch must not do, and what it costs to have done it. */
const held: Record<string, string> = {
  'curing/oven/oven-actions.tsx': 'a tube bent while it is soft, and a burnt hand',
  'laying-up/build/stage-actions.tsx': 'a wait that is ended too early',
  'laying-up/clocks/clock-actions.tsx': 'a clock that is ended before its time',
  'laying-up/mix/cup-buttons.tsx': 'a cup of resin',
  'laying-up/mix/pour-actions.tsx': 'a cup mixed lean or rich',
  'laying-up/proof/read-dial.tsx': 'a proof test that is given up, with its readings',
  'laying-up/start/start-screen.tsx': 'a tube of cloth that does not suit it',
  'laying-up/weigh/weigh-in-screen.tsx': 'a weight that cannot be right',
  'made/record/build-record-screen.tsx': 'a closed record that is open again',
  'made/record/fix-form.tsx': 'a line of the record',
  'phone/data/demo-data.tsx': 'what was tried in the demo shop',
  'phone/data/erase-screen.tsx': 'everything on this phone',
  'planning/cutting/weigh-piece-screen.tsx': 'a weight that cannot be right',
  'shell/cannot-open.tsx': 'what was tried in the demo shop',
};

/** What no second press takes back, by the name it has in the code. */
const final = ['eraseAll', 'leaveDemo', 'throwOut'];

/** Names that a screen gives to handlers, here or in a function that it calls from one. */
function handlersOf(text: string, act: string): string[] {
  const wrapped = [...text.matchAll(/const (\w+) = (?:async )?\(\) =>([\s\S]*?);\n/g)];
  const named = wrapped.flatMap(([, name = '', body = '']) => (body.includes(act) ? [name] : []));
  const longer = [...text.matchAll(/const (\w+) = async \(\) => \{([\s\S]*?)\n {0,2}\};/g)];
  return [act, ...named, ...longer.flatMap(([, name = '', body = '']) => (body.includes(act) ? [name] : []))];
}

describe('what must not go wrong by a stray touch', () => {
  it('is held, on every screen where it is done, and nothing else is', () => {
    const holding = screens.filter(({ text }) => text.includes('<HoldAction')).map(({ name }) => name);
    expect(holding.sort()).toEqual(Object.keys(held).sort());
  });

  it.each(final)('is never one press away: %s', (act) => {
    const doing = screens.filter(({ text }) => new RegExp(`\\b${act}\\(`).test(text));
    expect(doing.length).toBeGreaterThan(0);
    const pressed = doing.flatMap(({ name, text }) =>
      handlersOf(text, act).flatMap((handler) =>
        [...text.matchAll(new RegExp(`on(Press|Click)=\\{[^}]*\\b${handler}\\b`, 'g'))].map(
          ([use]) => `${name}: ${use}`,
        ),
      ),
    );
    expect(pressed).toEqual([]);
    const heldThere = doing.filter(({ text }) =>
      handlersOf(text, act).some((handler) => new RegExp(`onHeld=\\{[^}]*\\b${handler}\\b`).test(text)),
    );
    expect(heldThere.map(({ name }) => name)).toEqual(doing.map(({ name }) => name));
  });
});
