import { Secondary } from '#app/parts/action.tsx';
import { install, installed, installOffer, iOSTab } from '#app/platform/install.ts';

/** On the home screen, or the way there. */
export function InstallSettings() {
  return (
    <>
      <h2>On the home screen</h2>
      {installed ? (
        <p>It runs from the home screen.</p>
      ) : iOSTab ? (
        <p>
          Tap Share, then Add to Home Screen. The app there keeps a record of its own: save a backup here
          first, and restore it there.
        </p>
      ) : installOffer.value ? (
        <Secondary onPress={install}>Put it on the home screen</Secondary>
      ) : (
        <p>
          The browser’s menu has ‘Install’ or ‘Add to Home screen’. There it opens faster and is kept more
          surely.
        </p>
      )}
    </>
  );
}
