// Shows the bell's notifications, because phones allow no other way, and opens Watch when one is pressed. It keeps nothing
// and answers for no page: everything else goes to the book as before.
self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('notificationclick', (event) => {
  event.notification.close();
  event.waitUntil(
    self.clients.matchAll({ type: 'window', includeUncontrolled: true }).then(([open]) => {
      if (!open) return self.clients.openWindow('/watch');
      return open.focus().then((page) => page.navigate('/watch'));
    }),
  );
});
