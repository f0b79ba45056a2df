// Serves a built app from a folder, for this machine only: node scripts/serve.mjs [folder] [--port N] [--quiet]
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

/** @type {Record<string, string>} */
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
};

/** Senses of the phone that the app has no use for; it reads codes with the camera. A page cannot say this itself. */
const UNUSED = [
  'accelerometer',
  'display-capture',
  'geolocation',
  'gyroscope',
  'hid',
  'magnetometer',
  'microphone',
  'midi',
  'payment',
  'serial',
  'usb',
];

// The page carries the same policy in a meta tag; frame-ancestors works only as a header.
export const HEADERS = {
  'Content-Security-Policy':
    "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; " +
    "worker-src 'self'; connect-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none'; " +
    "frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Permissions-Policy': ['camera=(self)', ...UNUSED.map((feature) => `${feature}=()`)].join(', '),
};

/**
 * The file a request path names, or undefined when it is none of the folder's.
 * @param {string} root
 * @param {string} requestUrl
 */
function fileFor(root, requestUrl) {
  let path;
  try {
    path = decodeURIComponent(new URL(requestUrl, 'http://localhost').pathname);
  } catch {
    return undefined;
  }
  if (path.includes('\0')) return undefined;
  const file = resolve(join(root, path.endsWith('/') ? `${path}index.html` : path));
  if (!file.startsWith(root + sep)) return undefined;
  return existsSync(file) && statSync(file).isFile() ? file : undefined;
}

/**
 * A server of the folder, which does not listen yet.
 * @param {string} root an absolute path
 */
export function serve(root) {
  return createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { ...HEADERS, Allow: 'GET, HEAD' }).end();
      return;
    }
    const file = fileFor(root, request.url ?? '/');
    if (!file) {
      response.writeHead(404, { ...HEADERS, 'Content-Type': TYPES['.txt'] }).end('Not found\n');
      return;
    }
    // Names in assets/ carry a hash of their content; everything else must be asked for again.
    const hashed = file.startsWith(join(root, 'assets') + sep);
    response.writeHead(200, {
      ...HEADERS,
      'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream',
      'Content-Length': statSync(file).size,
      'Cache-Control': hashed ? 'public, max-age=31536000, immutable' : 'no-cache',
    });
    if (request.method === 'HEAD') response.end();
    else createReadStream(file).pipe(response);
  });
}

function main() {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { port: { type: 'string' }, quiet: { type: 'boolean' } },
  });
  const root = resolve(positionals[0] ?? 'dist');
  const port = Number(values.port ?? process.env.PORT ?? 4173);

  if (!existsSync(join(root, 'index.html'))) {
    console.error(`There is no index.html in ${root}: build first, with npm run build.`);
    process.exit(1);
  }

  const server = serve(root);
  server.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
    console.error(
      error.code === 'EADDRINUSE'
        ? `Port ${port} is in use. Stop what runs there, or choose another: PORT=${port + 1} npm start`
        : error.message,
    );
    process.exit(1);
  });
  server.listen(port, '127.0.0.1', () => {
    if (values.quiet) return;
    console.log(`
Tubewright is at  http://localhost:${port}   (Ctrl+C stops it)

To get it onto a phone:
  1. Copy what is in the folder dist to any static host that serves HTTPS, into any path
     (working with no network needs a service worker, and browsers allow that over HTTPS only).
  2. Open that address on the phone once, with a network, and wait until the page is there.
  3. In the browser's menu choose to add it to the home screen. From then on it needs no network.
`);
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();
