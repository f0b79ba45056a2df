import { Connection } from '#storage/connection.ts';

const chosenKey = 'tubewright-shop';

export function demoChosen(): boolean {
  try {
    return localStorage.getItem(chosenKey) === 'demo';
  } catch {
    return false;
  }
}

export function chooseShop(which: 'own' | 'demo'): void {
  try {
    localStorage.setItem(chosenKey, which);
  } catch {
    // Without localStorage the builder's own shop opens, which is the safe side.
  }
}

export const shopName = () => (demoChosen() ? 'tubewright-demo' : 'tubewright');

/** Begun before all else of the app is run: the database opens meanwhile. */
export const connecting = Connection.open({ name: shopName() });
