import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { HEADERS } from '../../scripts/serve.mjs';

const root = resolve(import.meta.dirname, '../..');
const text = (path: string) => readFileSync(join(root, path), 'utf8');
const json = (path: string) => JSON.parse(text(path));

/** Licenses under which an app may be given away without giving its own source, or asking anybody. */
const permissive = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', '0BSD', 'OFL-1.1'];

const direct = Object.keys(json('package.json').dependencies);

/** Everything that can end up in what is shipped, with what it needs itself. */
function shipped(): Map<string, { license: string; version: string }> {
  const found = new Map<string, { license: string; version: string }>();
  const queue = [...direct];
  for (const name of queue) {
    if (found.has(name)) continue;
    const { license, version, dependencies = {} } = json(`node_modules/${name}/package.json`);
    found.set(name, { license, version });
    queue.push(...Object.keys(dependencies));
  }
  return found;
}

const directives = (policy: string) =>
  policy
    .split(';')
    .map((directive) => directive.trim())
    .sort();

function filesUnder(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true, recursive: true }).flatMap((entry) =>
    entry.isFile() ? [join(entry.parentPath, entry.name)] : [],
  );
}

describe('what is shipped', () => {
  it('carries a permissive license, each package and what it needs itself', () => {
    const packages = shipped();
    expect(packages.size).toBeGreaterThanOrEqual(direct.length);
    const others = [...packages].filter(
      ([, { license }]) => !license.split(/[() ]|OR/).some((one) => permissive.includes(one)),
    );
    expect(others).toEqual([]);
  });

  it('stands in the table for developers with its version, its license and why it is there', () => {
    const rows = text('DEVELOPERS.md')
      .split('\n')
      .filter((line) => line.startsWith('| '));
    for (const [name, { license, version }] of shipped()) {
      const row = rows.find((line) => line.split('|')[1]?.includes(`${name} ${version}`));
      expect(row, `${name} ${version}`).toBeDefined();
      expect(row, name).toContain(license.replace(/[()]/g, ''));
      expect((row?.split('|')[4] ?? '').trim().length, `why ${name}`).toBeGreaterThan(10);
    }
  });

  it('says the same policy in the page and in the header, which alone can forbid frames', () => {
    const page =
      /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(text('index.html'))?.[1] ?? '';
    const header = directives(HEADERS['Content-Security-Policy']);
    expect(header).toEqual([...directives(page), "frame-ancestors 'none'"].sort());
    expect(page).toContain("default-src 'self'");
    expect(page).not.toMatch(/unsafe|https?:|\*/);
  });

  it('asks for the camera, which reads codes, and for no other sense of the phone', () => {
    const policy = HEADERS['Permissions-Policy'].split(', ');
    expect(policy).toContain('camera=(self)');
    expect(policy.filter((feature) => !feature.endsWith('=()'))).toEqual(['camera=(self)']);
    for (const feature of ['microphone', 'geolocation', 'payment', 'usb']) {
      expect(policy).toContain(`${feature}=()`);
    }
  });

  it('holds no key, token or password', () => {
    // In pieces, so that this file is not its own finding.
    const secrets = new RegExp(
      [
        `-----BEGIN [A-Z ]*PRIVATE ${'KEY'}`,
        `\\b${'AK'}IA[0-9A-Z]{16}\\b`,
        `\\b${'gh'}[pousr]_[A-Za-z0-9]{30,}`,
        `\\b${'xo'}x[baprs]-[0-9A-Za-z-]{10,}`,
        `\\b(?:api[_-]?key|secret|password|token)["']?\\s*[:=]\\s*["'][A-Za-z0-9+/_-]{16,}["']`,
        '://[^/\\s:@"\'`]+:[^/\\s:@"\'`]+@',
      ].join('|'),
      'i',
    );
    const files = ['src', 'shared', 'scripts', 'tests', 'demo', 'public']
      .flatMap(filesUnder)
      .filter((file) => /\.(ts|tsx|mjs|json|html|css|svg|txt|md|csv)$/.test(file));
    expect(files.length).toBeGreaterThan(500);
    expect(files.filter((file) => secrets.test(readFileSync(file, 'utf8')))).toEqual([]);
  });
});
