import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { allTerms, findTerms } from '#app/phone/words/terms.ts';

const sources = readdirSync('src/app', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.tsx'))
  .map((name) => readFileSync(`src/app/${name}`, 'utf8'))
  .join('\n');

describe('the words of the trade', () => {
  test('each has an address of its own', () => {
    expect(new Set(allTerms.map((t) => t.id)).size).toBe(allTerms.length);
    for (const { id } of allTerms) expect(id).toMatch(/^[a-z0-9-]+$/);
  });

  test('are told in sentences short enough to be read with cloth in hand', () => {
    for (const { name, says } of allTerms) {
      expect(says, name).toMatch(/[.]$/);
      for (const sentence of says.split(/(?<=[.:]) /))
        expect(sentence.split(' ').length, sentence).toBeLessThan(31);
    }
  });

  test('are there for every small question that a screen asks', () => {
    const asked = [...sources.matchAll(/<Ask\s+term="([^"]+)"/g)].map(([, id]) => id);
    expect(asked.length).toBeGreaterThan(10);
    for (const id of asked) expect(allTerms.map((t) => t.id)).toContain(id);
  });

  test('are found by their name first, and by what else a shop calls them', () => {
    expect(findTerms('seam')[0]?.name).toBe('Seam');
    expect(findTerms('GSM').map((t) => t.id)).toEqual(['areal-weight']);
    expect(findTerms('glass transition').map((t) => t.id)).toEqual(['tg']);
    expect(findTerms('half overlap')[0]?.id).toBe('tape-overlap');
    expect(findTerms('tape')).not.toEqual(findTerms('tape', 'name'));
    expect(findTerms('kick', 'name').map((t) => t.id)).toEqual(['pot-life', 'gel']);
    expect(findTerms('zzz')).toEqual([]);
  });
});
