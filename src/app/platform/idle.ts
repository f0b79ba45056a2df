/** A moment in which nothing else is to be done; a browser without such moments gives one after this, ms */
const otherwise = 50;
/** A page that is never idle gets on all the same after this, ms */
const longest = 1000;

export const idle = (): Promise<void> =>
  new Promise((resolve) => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => resolve(), { timeout: longest });
    else setTimeout(resolve, otherwise);
  });
