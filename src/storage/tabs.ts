interface News {
  /** Subjects and documents that were written. */
  touched: string[];
  /** No tab makes an id before this one from now on. */
  greatestId: string;
}

/** Lets the tabs that have the same database open hear of each other's writes. */
export class Tabs {
  private channel: BroadcastChannel | undefined;
  private readonly listeners = new Set<(touched: string[]) => void>();

  constructor(name: string, heardOf: (id: string) => void) {
    this.channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);
    this.channel?.addEventListener('message', ({ data }: MessageEvent<News>) => {
      heardOf(data.greatestId);
      for (const listener of this.listeners) listener(data.touched);
    });
  }

  tell(touched: string[], greatestId: string): void {
    const news: News = { touched, greatestId };
    this.channel?.postMessage(news);
  }

  listen(listener: (touched: string[]) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** After this `tell` tells nobody: a write that is under way ends well without it. */
  close(): void {
    this.channel?.close();
    this.channel = undefined;
  }
}
