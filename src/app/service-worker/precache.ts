// One cache for each version of the app, filled whole or not at all, so that a page and its parts always match.

import { withPolicyAsHeader } from './page-policy.ts';

export interface PrecacheEntry {
  url: string;
  revision: string | null;
}

// Pages opened before an update go on running the version before, and may still ask for its parts.
const EARLIER_VERSIONS_KEPT = 2;

export interface Precache {
  readonly name: string;
  /** Resolves to the parts that the page itself names. */
  fill(): Promise<string[]>;
  page(): Promise<Response>;
  part(request: Request): Promise<Response>;
  dropEarlier(): Promise<void>;
}

export function openPrecache(entries: readonly PrecacheEntry[], scope: string): Precache {
  const prefix = `tubewright ${scope} `;
  const name = prefix + fingerprint(JSON.stringify(entries));
  const pageUrl = new URL('index.html', scope).href;

  async function fill(): Promise<string[]> {
    const cache = await caches.open(name);
    try {
      await Promise.all(entries.map((entry) => addEntry(cache, entry, scope)));
      const named = await namedByPage(cache, pageUrl, entries);
      await keepPage(cache, [pageUrl, scope]);
      return named;
    } catch (error) {
      await caches.delete(name);
      throw error;
    }
  }

  async function page(): Promise<Response> {
    const cache = await caches.open(name);
    return (await cache.match(pageUrl, { ignoreVary: true })) ?? fetch(pageUrl);
  }

  async function part(request: Request): Promise<Response> {
    const cache = await caches.open(name);
    const own = await cache.match(request, { ignoreVary: true });
    return own ?? (await caches.match(request, { ignoreVary: true })) ?? fetch(request);
  }

  async function dropEarlier(): Promise<void> {
    const earlier = (await caches.keys()).filter((key) => key.startsWith(prefix) && key !== name);
    await Promise.all(earlier.slice(0, -EARLIER_VERSIONS_KEPT).map((key) => caches.delete(key)));
  }

  return { name, fill, page, part, dropEarlier };
}

async function addEntry(cache: Cache, { url, revision }: PrecacheEntry, scope: string): Promise<void> {
  const address = new URL(url, scope).href;
  // No revision: the name carries a hash of the content, so what an earlier version stored is the same.
  const stored = revision === null ? await caches.match(address, { ignoreVary: true }) : undefined;
  const response = stored ?? (await fetch(address, { cache: revision === null ? 'default' : 'reload' }));
  if (!response.ok) throw new Error(`${address} answered ${response.status}`);
  await cache.put(address, response.redirected || response.headers.has('Vary') ? plain(response) : response);
}

/**
 * A browser refuses a redirected response as the answer to opening a page, and some hosts redirect index.html. One
 * that varies may not be found again by a browser that looks for it without this worker.
 */
function plain(response: Response): Response {
  const { status, statusText } = response;
  const headers = new Headers(response.headers);
  headers.delete('Vary');
  return new Response(response.body, { status, statusText, headers });
}

/** Under each address that it is opened by. */
async function keepPage(cache: Cache, addresses: readonly string[]): Promise<void> {
  const stored = await cache.match(addresses[0] ?? '');
  if (!stored) return;
  const page = await withPolicyAsHeader(stored);
  await Promise.all(addresses.map((address) => cache.put(address, page.clone())));
}

/** Caught halfway through an upload, a host gives the new page with the old parts: that version must not be kept. */
async function namedByPage(
  cache: Cache,
  pageUrl: string,
  entries: readonly PrecacheEntry[],
): Promise<string[]> {
  const html = (await (await cache.match(pageUrl))?.text()) ?? '';
  const known = new Set(entries.map((entry) => entry.url));
  const named = [...html.matchAll(/(?:src|href)="\.\/(assets\/[^"]+)"/g)].map(([, path = '']) => path);
  const unknown = named.find((path) => !known.has(path));
  if (unknown) throw new Error(`${pageUrl} belongs to another version: it wants ${unknown}`);
  return named;
}

function fingerprint(text: string): string {
  // FNV-1a, 32 bits: tells versions apart, guards nothing.
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(16);
}
