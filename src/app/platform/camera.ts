export const hasCamera = (): boolean => typeof navigator.mediaDevices?.getUserMedia === 'function';

export type CameraRefusal = 'denied' | 'none';

/** The camera at the back, shown in a video element; returns what turns it off, or why there is no picture. */
export async function startCamera(video: HTMLVideoElement): Promise<(() => void) | CameraRefusal> {
  try {
    const stream = await navigator.mediaDevices.getUserMedia({
      video: { facingMode: 'environment', width: { ideal: 1280 }, height: { ideal: 720 } },
    });
    video.srcObject = stream;
    await video.play();
    return () => {
      for (const track of stream.getTracks()) track.stop();
      video.srcObject = null;
    };
  } catch (error) {
    return error instanceof DOMException && error.name === 'NotAllowedError' ? 'denied' : 'none';
  }
}

/** What the camera sees now; undefined before the first frame. */
export function frameOf(video: HTMLVideoElement, canvas: HTMLCanvasElement): ImageData | undefined {
  const { videoWidth: width, videoHeight: height } = video;
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context || width === 0) return undefined;
  canvas.width = width;
  canvas.height = height;
  context.drawImage(video, 0, 0);
  return context.getImageData(0, 0, width, height);
}
