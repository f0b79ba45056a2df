import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page } from '@playwright/test';
import { serve } from '../../../scripts/serve.mjs';
import { builtApp } from './own-host.ts';

/** A host with a copy of the built app two folders down, to which another version may be uploaded. */
export interface UploadHost {
  folder: string;
  address: string;
  edit: (file: string, change: (text: string) => string) => void;
  /** From now on it sends other headers: one that is undefined is left out. */
  sendHeaders: (change: Record<string, string | undefined>) => void;
  /** From now on nothing answers. */
  stop: () => Promise<void>;
  remove: () => Promise<void>;
}

export async function startUploadHost(): Promise<UploadHost> {
  const host = mkdtempSync(join(tmpdir(), 'tubewright-host-'));
  const folder = join(host, 'shop', 'bench');
  cpSync(builtApp, folder, { recursive: true });
  const server = serve(host);
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const { port } = server.address() as AddressInfo;
  const stop = async () => {
    if (!server.listening) return;
    server.closeAllConnections();
    await new Promise<void>((closed) => server.close(() => closed()));
  };
  return {
    folder,
    address: `http://localhost:${port}/shop/bench/`,
    edit: (file, change) => {
      const path = join(folder, file);
      const before = readFileSync(path, 'utf8');
      const after = change(before);
      expect(after).not.toBe(before);
      writeFileSync(path, after);
    },
    sendHeaders: (change) => {
      const plain = serve(host);
      server.removeAllListeners('request');
      server.on('request', (request, response) => {
        const writeHead = response.writeHead.bind(response);
        response.writeHead = ((status: number, headers: Record<string, string>) => {
          const sent = Object.entries({ ...headers, ...change }).filter(([, value]) => value !== undefined);
          return writeHead(status, Object.fromEntries(sent) as Record<string, string>);
        }) as typeof response.writeHead;
        plain.emit('request', request, response);
      });
    },
    stop,
    remove: async () => {
      await stop();
      rmSync(host, { recursive: true });
    },
  };
}

/** Uploads a version that differs in the page's description only. */
export function uploadNewerVersion({ edit }: UploadHost): void {
  edit('index.html', (html) =>
    html.replace(/name="description" content="[^"]*"/, 'name="description" content="newer"'),
  );
  edit('service-worker.js', (code) => code.replace(/(revision["`']?:["`'])/, '$1newer'));
}

export const description = (page: Page) => page.locator('meta[name=description]').getAttribute('content');

export async function openUnderWorker(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).active?.state === 'activated');
}

/** Asks the host for a newer version: what became of the check. */
export async function lookForUpdate(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    const worker = registration.installing ?? registration.waiting;
    if (!worker) return 'none';
    while (worker.state === 'installing') await new Promise((tick) => setTimeout(tick, 20));
    return worker.state;
  });
}

/**
 * Lets a page fetch all its screens. One reloaded while it still does leaves requests with the old worker, and Chromium
 * then lets the newer one start only minutes later.
 */
export const settled = (page: Page) => page.waitForTimeout(4000);
