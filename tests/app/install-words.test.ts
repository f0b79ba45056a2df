import { describe, expect, test } from 'vitest';
import { type InstallWay, installHow, installWay } from '#app/platform/install-words.ts';

const agents: readonly [what: string, agent: string, touchPoints: number, way: InstallWay][] = [
  [
    'an iPhone',
    'Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.0 Mobile/15E148 Safari/604.1',
    5,
    'iOS',
  ],
  [
    'an iPad, which calls itself a Mac',
    'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.0 Safari/605.1.15',
    5,
    'iOS',
  ],
  [
    'a Mac',
    'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.0 Safari/605.1.15',
    0,
    'deskSafari',
  ],
  [
    'Chromium on Android',
    'Mozilla/5.0 (Linux; Android 10; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Mobile Safari/537.36',
    5,
    'android',
  ],
  [
    'Firefox on Android',
    'Mozilla/5.0 (Android 15; Mobile; rv:140.0) Gecko/140.0 Firefox/140.0',
    5,
    'androidFirefox',
  ],
  [
    'Firefox on a desk',
    'Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0',
    0,
    'deskFirefox',
  ],
  [
    'Chromium on a desk',
    'Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Safari/537.36',
    0,
    'desk',
  ],
  [
    'Chromium on a Mac',
    'Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Safari/537.36',
    0,
    'desk',
  ],
];

describe('the way to the home screen', () => {
  test.each(agents)('is that of %s', (_, agent, touchPoints, way) => {
    expect(installWay(agent, touchPoints)).toBe(way);
  });

  test('says that the record does not come along, where it does not', () => {
    expect(installHow.iOS).toContain('save a backup here first');
    expect(installHow.deskSafari).toContain('save a backup here first');
  });
});
