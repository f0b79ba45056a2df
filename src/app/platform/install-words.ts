/** Where a browser lets a page be put on the home screen. */
export type InstallWay = 'iOS' | 'androidFirefox' | 'android' | 'deskFirefox' | 'deskSafari' | 'desk';

/** By what the browser calls itself; an iPad calls itself a Mac that can be touched. */
export function installWay(agent: string, touchPoints: number): InstallWay {
  if (/iPhone|iPad|iPod/.test(agent) || (agent.includes('Macintosh') && touchPoints > 1)) return 'iOS';
  if (agent.includes('Android')) return /Firefox/.test(agent) ? 'androidFirefox' : 'android';
  if (agent.includes('Firefox')) return 'deskFirefox';
  return /Macintosh.*Safari/.test(agent) && !/Chrom/.test(agent) ? 'deskSafari' : 'desk';
}

const ownRecord = 'The app there keeps a record of its own: save a backup here first, and restore it there.';

export const installHow: Record<InstallWay, string> = {
  iOS: `Tap Share, then Add to Home Screen. Where there is no Share, it is in the menu beside the address. ${ownRecord}`,
  androidFirefox: 'Open the menu with the three dots, then tap Add to Home screen or Install.',
  android: 'Open the menu with the three dots, then tap Add to Home screen, then Install.',
  deskFirefox:
    'This browser may not install pages on a desk. Keep a bookmark: the record stays in this browser, and it opens without a network all the same.',
  deskSafari: `Choose File, then Add to Dock. ${ownRecord}`,
  desk: 'Look for Install at the right end of the address, or in the browser’s menu.',
};

/** What is gained by it. */
export const installWhy =
  'From the home screen it opens in one tap, with no network, and the phone keeps the record more surely.';
