// Keeps the clerk's page for when the network is gone; scope and storage end at sign-out.
addEventListener("activate", (event) => event.waitUntil(clients.claim()));
addEventListener("fetch", (event) => {
	const { pathname } = new URL(event.request.url);
	if (event.request.method !== "GET" || !/^\/(stock$|public\/)/.test(pathname)) return;
	event.respondWith(fetch(event.request).catch(async () => (await caches.match(pathname)) ?? Response.error()));
});
