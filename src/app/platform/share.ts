/** Whether the phone's share sheet takes this file. */
export function canShare(file: File): boolean {
  return typeof navigator.canShare === 'function' && navigator.canShare({ files: [file] });
}

/** Opens the share sheet. Only from a tap, and soon after it: make the file first. */
export async function shareFile(file: File): Promise<'shared' | 'cancelled' | 'refused'> {
  try {
    await navigator.share({ files: [file], title: file.name });
    return 'shared';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'cancelled' : 'refused';
  }
}
