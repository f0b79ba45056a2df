async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
): Promise<Uint8Array<ArrayBuffer>> {
  const piped = new Blob([bytes]).stream().pipeThrough(stream);
  return new Uint8Array(await new Response(piped).arrayBuffer());
}

/** A text as few bytes. */
export const packed = (text: string): Promise<Uint8Array<ArrayBuffer>> =>
  through(new TextEncoder().encode(text), new CompressionStream('deflate-raw'));

/** The text again; rejects when the bytes are not a packed text. */
export async function unpacked(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  return new TextDecoder('utf-8', { fatal: true }).decode(
    await through(bytes, new DecompressionStream('deflate-raw')),
  );
}
