import decodeQR from 'qr/decode.js';
import { frameOf } from '#app/platform/camera.ts';

/** A camera frame is looked at this often, ms: oftener only warms the phone. */
const every = 80;

/** Reads codes off a running camera until it is stopped. A frame without a code is no fault. */
export function scanning(video: HTMLVideoElement, onCode: (code: string) => void): () => void {
  const canvas = document.createElement('canvas');
  const timer = setInterval(() => {
    const frame = frameOf(video, canvas);
    if (!frame) return;
    try {
      onCode(decodeQR(frame));
    } catch {
      return;
    }
  }, every);
  return () => clearInterval(timer);
}
