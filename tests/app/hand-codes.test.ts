import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase45, toBase45 } from '#app/phone/hand/base45.ts';
import { type Collected, codesOf, isWhole, mostCodes, textOf, withCode } from '#app/phone/hand/codes.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('text for a code', () => {
  // RFC 9285, The Base45 Data Encoding, sections 4.3 and 4.4.
  test.each([
    ['AB', 'BB8'],
    ['Hello!!', '%69 VD92EX0'],
    ['base-45', 'UJCLQE7W581'],
    ['ietf!', 'QED8WEX0'],
  ])('%s is %s, as RFC 9285 has it', (plain, coded) => {
    expect(toBase45(bytes(plain))).toBe(coded);
    expect(new TextDecoder().decode(fromBase45(coded))).toBe(plain);
  });

  test('comes back as it was, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (some) => {
        expect(fromBase45(toBase45(some))).toEqual(new Uint8Array(some));
      }),
    );
  });

  // RFC 9285, section 6: 65,536 and above, and characters outside the alphabet, must be refused.
  test.each(['GGW', ':::', 'ab', 'A', '::'])('%s is refused', (text) => {
    expect(fromBase45(text)).toBeUndefined();
  });
});

/** Every code in this order. */
const collect = (codes: readonly string[], before?: Collected) =>
  codes.reduce<Collected | undefined>((so, code) => withCode(so, code), before);

describe('a sequence of codes', () => {
  const long = Array.from({ length: 4000 }, (_, i) => ((i * 7919) % 9973).toString(36)).join(' ');

  test('gives the text again, in any order and with repeats', async () => {
    const codes = await codesOf(long);
    expect(codes?.length).toBeGreaterThan(5);
    const mixed = [...(codes ?? []).slice(3), ...(codes ?? []).slice(0, 5).reverse()];
    const whole = collect(mixed);
    expect(whole && isWhole(whole)).toBe(true);
    expect(whole && (await textOf(whole))).toBe(long);
  });

  test('is not whole while one is missing', async () => {
    const [, ...most] = (await codesOf(long)) ?? [];
    const so = collect(most);
    expect(so && isWhole(so)).toBe(false);
  });

  test('pays no heed to a code of something else', async () => {
    const [first = ''] = (await codesOf(long)) ?? [];
    const so = collect([first]);
    for (const other of ['', 'https://example.org', 'TW12', first.toLowerCase(), `${first}é`]) {
      expect(withCode(so, other)).toBe(so);
    }
  });

  test('of another parcel begins anew', async () => {
    const [one, other] = [await codesOf(long), await codesOf('short')];
    const so = collect([...(one ?? []).slice(0, 2), ...(other ?? [])]);
    expect(so && (await textOf(so))).toBe('short');
  });

  test('whose bytes were changed gives nothing', async () => {
    const [code = ''] = (await codesOf('short')) ?? [];
    const changed = code.slice(0, -3) + (code.endsWith('000') ? '111' : '000');
    const so = collect([changed]);
    expect(so && (await textOf(so))).toBeUndefined();
  });

  test('is refused when it would be too many', async () => {
    let seed = 1;
    const noise = Array.from({ length: 700 * mostCodes }, () => {
      seed = (seed * 16_807) % 2_147_483_647;
      return String.fromCharCode(33 + (seed % 90));
    }).join('');
    expect(await codesOf(noise)).toBeUndefined();
  });
});
