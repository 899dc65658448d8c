/**
 * Keeps the page itself in the browser, so that it opens without a line. Only what was built is kept, and only where the browser
 * allows it: over https, or on the shop's own computer.
 */
export function keepShell(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  // After all else: the first room is not to wait for the rest of the house.
  const keep = () => void navigator.serviceWorker.register('/keep-shell.js');
  if (document.readyState === 'complete') keep();
  else window.addEventListener('load', keep, { once: true });
}
