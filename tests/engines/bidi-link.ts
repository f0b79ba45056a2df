type Answer = Record<string, unknown>;

interface Waiting {
  resolve(answer: Answer): void;
  reject(error: Error): void;
}

/** WebDriver BiDi: commands and events as JSON over one socket. */
export class BidiLink {
  private commands = 0;
  private readonly waiting = new Map<number, Waiting>();
  private readonly listeners = new Map<string, (params: Answer) => void>();

  private constructor(private readonly socket: WebSocket) {
    socket.addEventListener('message', ({ data }) => this.take(JSON.parse(String(data))));
    socket.addEventListener('close', () => {
      for (const { reject } of this.waiting.values()) reject(new Error('the browser went away'));
    });
  }

  static async to(address: string): Promise<BidiLink> {
    const socket = new WebSocket(`${address}/session`);
    await new Promise((resolve, reject) => {
      socket.addEventListener('open', resolve, { once: true });
      socket.addEventListener('error', () => reject(new Error(`nobody answers at ${address}`)));
    });
    return new BidiLink(socket);
  }

  ask(method: string, params: Answer): Promise<Answer> {
    const id = ++this.commands;
    return new Promise((resolve, reject) => {
      this.waiting.set(id, { resolve, reject });
      this.socket.send(JSON.stringify({ id, method, params }));
    });
  }

  onEvent(method: string, listener: (params: Answer) => void): void {
    this.listeners.set(method, listener);
  }

  private take(message: Answer): void {
    if (message.type === 'event') {
      this.listeners.get(String(message.method))?.(message.params as Answer);
      return;
    }
    const waiting = this.waiting.get(message.id as number);
    this.waiting.delete(message.id as number);
    if (message.type === 'success') waiting?.resolve(message.result as Answer);
    else waiting?.reject(new Error(`${message.error}: ${message.message}`));
  }
}
