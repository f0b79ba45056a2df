/** From the home screen of an iPhone or iPad a download leads nowhere: there the share sheet is the only way. */
export const canSave: boolean = (navigator as Navigator & { standalone?: boolean }).standalone !== true;

/** Long enough for the slowest browser to begin reading the file, ms */
const heldFor = 60_000;

/** Puts a file where this browser puts downloads. */
export function saveFile(file: File): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), heldFor);
}
