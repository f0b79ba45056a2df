import type { PhotoRecord } from '#shared/record/photo.ts';
import { photoHash } from '#storage/photo-hash.ts';

/** A photo is a note, not a print: this much is enough to see a dry spot, px */
const longestSide = 1600;
const quality = 0.8;

/** The size a picture is kept at: never larger than it came, and never without a side. */
export function keptSize(width: number, height: number): { width: number; height: number } {
  const scale = Math.min(1, longestSide / Math.max(width, height));
  return {
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  };
}

export interface Picture {
  record: PhotoRecord;
  blob: Blob;
}

async function scaledDown(file: Blob): Promise<Blob | undefined> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const canvas = document.createElement('canvas');
  Object.assign(canvas, keptSize(bitmap.width, bitmap.height));
  const context = canvas.getContext('2d');
  if (!context) return undefined;
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return new Promise((done) => canvas.toBlob((blob) => done(blob ?? undefined), 'image/jpeg', quality));
}

/** Scales a picture down and names it by its bytes; nothing when this phone cannot read it. */
export async function takePicture(file: Blob, at: number): Promise<Picture | undefined> {
  const blob = await scaledDown(file).catch(() => undefined);
  if (!blob) return undefined;
  const hash = await photoHash(await blob.arrayBuffer());
  return { record: { record: 'photo', v: 1, hash, type: blob.type, bytes: blob.size, addedAt: at }, blob };
}
