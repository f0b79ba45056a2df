import { Secondary } from '#app/parts/action.tsx';
import { install, installed, installOffer, wayHere } from '#app/platform/install.ts';
import { installHow, installWhy } from '#app/platform/install-words.ts';

/** On the home screen, or the way there. */
export function InstallSettings() {
  return (
    <>
      <h2>On the home screen</h2>
      {installed ? (
        <p>It runs from the home screen.</p>
      ) : (
        <>
          <p>{installWhy}</p>
          {installOffer.value ? (
            <Secondary onPress={install}>Put it on the home screen</Secondary>
          ) : (
            <p>{installHow[wayHere]}</p>
          )}
        </>
      )}
    </>
  );
}
