/** Lets the browser keep the site, so that it works without a network. Without a service worker it works as before. */
export function keepOffline(): void {
  if (import.meta.env.SSR || !import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const register = (): void => {
    // A browser may forbid it, in a private window for instance; then the site needs the network.
    navigator.serviceWorker.register(`${import.meta.env.BASE_URL}offline.js`).catch(() => undefined);
  };
  // After the page itself: what is kept for later must not slow what is read now.
  if (document.readyState === 'complete') register();
  else addEventListener('load', register, { once: true });
}
