/**
 * Names what an installed app is called and looks like. Named in the page, the browser would read it and draw its
 * icons while the first screen waits.
 */
export function nameManifest(): void {
  const link = document.createElement('link');
  link.rel = 'manifest';
  link.href = './manifest.webmanifest';
  document.head.append(link);
}
