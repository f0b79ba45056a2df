import type { CDPSession, Page } from '@playwright/test';

/** A phone with so little room for the app that a test can fill it. */
export class FullPhone {
  private constructor(
    private readonly page: Page,
    private readonly session: CDPSession,
    private readonly origin: string,
  ) {}

  /** Before the page opens the app: a browser remembers for a while how much room there was. */
  static async of(page: Page, baseURL: string, bytes: number): Promise<FullPhone> {
    const session = await page.context().newCDPSession(page);
    const { origin } = new URL(baseURL);
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: bytes });
    return new FullPhone(page, session, origin);
  }

  /** Fills what is left to the last hundred bytes, with noise that cannot be packed. */
  async fill(): Promise<void> {
    await this.page.evaluate(async () => {
      const request = indexedDB.open('filler');
      await new Promise((opened) => {
        request.onupgradeneeded = () => request.result.createObjectStore('noise', { autoIncrement: true });
        request.onsuccess = opened;
      });
      for (const size of [100_000, 10_000, 1000, 100]) {
        for (let wentIn = true; wentIn; ) {
          const transaction = request.result.transaction('noise', 'readwrite');
          const noise = new Uint8Array(size);
          for (let at = 0; at < size; at += 65_536) crypto.getRandomValues(noise.subarray(at, at + 65_536));
          transaction.objectStore('noise').put(noise);
          wentIn = await new Promise<boolean>((ended) => {
            transaction.oncomplete = () => ended(true);
            transaction.onabort = () => ended(false);
          });
        }
      }
      request.result.close();
    });
  }

  /** The builder frees some space. */
  async makeRoom(): Promise<void> {
    await this.session.send('Storage.overrideQuotaForOrigin', { origin: this.origin });
  }
}
