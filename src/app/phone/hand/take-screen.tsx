import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { LinkButton } from '#app/parts/action.tsx';
import { BigFigure } from '#app/parts/figure.tsx';
import { Screen } from '#app/parts/screen.tsx';
import { Warning } from '#app/parts/warning.tsx';
import { takeFile } from '#app/phone/data/restoring.ts';
import { type CameraRefusal, hasCamera, startCamera } from '#app/platform/camera.ts';
import { go } from '#app/router.ts';
import { type Collected, isWhole, textOf, withCode } from './codes.ts';
import { scanning } from './scan.ts';
import './hand.css';

const refusals: Record<CameraRefusal, string> = {
  denied: 'Allow the camera for this page in the browser’s settings, or have the other phone send the file.',
  none: 'No camera answers here. Have the other phone send the file, and restore it as a backup.',
};

function Cells({ collected }: { collected: Collected }) {
  const { parts, count } = collected;
  return (
    <ul class="take-cells" aria-hidden="true">
      {Array.from({ length: count }, (_, i) => (
        <li key={i} class={parts.has(i) ? 'take-seen' : undefined} />
      ))}
    </ul>
  );
}

/** Reads the codes that another phone shows. */
export function TakeScreen() {
  const video = useRef<HTMLVideoElement>(null);
  const collected = useSignal<Collected | undefined>(undefined);
  const trouble = useSignal<CameraRefusal | 'damaged' | undefined>(hasCamera() ? undefined : 'none');
  useEffect(() => {
    const element = video.current;
    if (!element) return;
    let stop = () => {};
    let here = true;
    const seen = async (code: string) => {
      const before = collected.peek();
      const after = withCode(before, code);
      if (after === before || !after) return;
      collected.value = after;
      if (!isWhole(after)) return;
      const text = await textOf(after);
      if (text === undefined) {
        trouble.value = 'damaged';
        collected.value = undefined;
        return;
      }
      takeFile(new File([text], 'What was scanned'));
      if (here) go('/data/restore');
    };
    startCamera(element).then((started) => {
      if (typeof started === 'string') trouble.value = started;
      else if (!here) started();
      else {
        const unscan = scanning(element, seen);
        stop = () => {
          unscan();
          started();
        };
      }
    });
    return () => {
      here = false;
      stop();
    };
  }, []);
  const so = collected.value;
  const why = trouble.value;
  return (
    <Screen
      title="Take from another phone"
      back={{ to: '/data', label: 'Data and backup' }}
      actions={<LinkButton to="/data/restore">Take a file instead</LinkButton>}
    >
      {why === 'damaged' && (
        <Warning kind="amber" title="They did not fit together" announce>
          The codes were read, and are not what was sent. Scan them again.
        </Warning>
      )}
      {why === 'denied' || why === 'none' ? (
        <Warning kind="amber" title="No camera" announce>
          {refusals[why]}
        </Warning>
      ) : (
        <>
          {so && (
            <div role="status">
              <BigFigure figure={`${so.parts.size}`} unit={`of ${so.count}`} label="Codes read" />
            </div>
          )}
          {so && <Cells collected={so} />}
          <video ref={video} class="take-camera" muted playsInline aria-label="What the camera sees" />
          <p>
            On the other phone open the tube or the plan, choose ‘To another phone’, then ‘Show it as codes’.
            Hold this phone so that the code fills the picture.
          </p>
        </>
      )}
    </Screen>
  );
}
