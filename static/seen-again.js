// Why: src/perimeter/page-look.ts
addEventListener('pageshow', (event) => {
	if (!event.persisted) return;
	document.documentElement.hidden = true;
	location.reload();
});
