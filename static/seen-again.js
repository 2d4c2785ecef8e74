// A browser may keep a whole page in memory and show it again by its back button, although the
// server said that it must not be stored. What it says may have ended since: ask for it again.
addEventListener('pageshow', (event) => {
	if (!event.persisted) return;
	document.documentElement.hidden = true;
	location.reload();
});
