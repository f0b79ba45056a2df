import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { resolve } from 'node:path';
import { serve } from '../../../scripts/serve.mjs';

/** The folder the app was built into. */
export const builtApp = resolve(process.env.TEST_DIST ?? 'dist');

export interface Host {
  address: string;
  /** From now on nothing answers. */
  stop: () => Promise<void>;
}

/** The built app on a host of its own, so that a test may take the host away. */
export async function startHost(): Promise<Host> {
  const server: Server = serve(builtApp);
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const { port } = server.address() as AddressInfo;
  const stop = async () => {
    if (!server.listening) return;
    server.closeAllConnections();
    await new Promise<void>((closed) => server.close(() => closed()));
  };
  return { address: `http://localhost:${port}/`, stop };
}
