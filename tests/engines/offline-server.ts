import type { Server } from 'node:http';
import { fileURLToPath } from 'node:url';
import { serve } from '../../scripts/serve.mjs';
import { freePort } from './processes.ts';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));

/** The host of the app. Stopped, nobody answers at its address: that is what no network is like. */
export class Host {
  private server: Server | undefined;

  private constructor(private readonly port: number) {}

  static async start(): Promise<Host> {
    const host = new Host(await freePort());
    const server = serve(dist);
    host.server = server;
    await new Promise<void>((listening) => server.listen(host.port, '127.0.0.1', listening));
    return host;
  }

  get address(): string {
    return `http://localhost:${this.port}/`;
  }

  async stop(): Promise<void> {
    const { server } = this;
    this.server = undefined;
    if (!server) return;
    const closed = new Promise((done) => server.close(done));
    server.closeAllConnections();
    await closed;
  }
}
