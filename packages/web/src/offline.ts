/** A newer edition that waits to be taken over, if there is one. */
let waiting: ServiceWorker | undefined;
const listeners = new Set<() => void>();

export const newerEdition = (): ServiceWorker | undefined => waiting;

export function onNewerEdition(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function noteWaiting(worker: ServiceWorker): void {
  waiting = worker;
  for (const listener of listeners) listener();
}

/** Opens the newer edition: it takes over, and the page loads again from it. */
export function takeNewerEdition(): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  waiting?.postMessage('take-over');
}

/** Keeps a whole copy of the app for a place without a network. Needs a secure context (https or loopback). */
export function keepOfflineCopy(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  navigator.serviceWorker
    .register('/service-worker.js')
    .then((registration) => {
      if (!registration) return;
      if (registration.waiting && navigator.serviceWorker.controller) noteWaiting(registration.waiting);
      registration.addEventListener('updatefound', () => {
        const worker = registration.installing;
        worker?.addEventListener('statechange', () => {
          if (worker.state === 'installed' && navigator.serviceWorker.controller) noteWaiting(worker);
        });
      });
    })
    .catch((error: unknown) => console.warn('No copy for offline use:', error));
}
