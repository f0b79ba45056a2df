/** Exists in dedicated workers only, so the page's type library does not know it. */
export interface SyncHandle {
  read(into: Uint8Array, options: { at: number }): number;
  write(bytes: Uint8Array, options: { at: number }): number;
  truncate(size: number): void;
  getSize(): number;
  flush(): void;
  close(): void;
}

export function syncHandle(file: FileSystemFileHandle): Promise<SyncHandle> {
  return (file as unknown as { createSyncAccessHandle(): Promise<SyncHandle> }).createSyncAccessHandle();
}
