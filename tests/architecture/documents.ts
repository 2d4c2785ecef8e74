/** Packages that run with the app and have no sentence of their own in the text. */
export function unexplainedPackages(names: readonly string[], text: string): string[] {
	const paragraphs = text.split('\n');
	return names.filter(
		(name) =>
			!paragraphs.some(
				(line) =>
					line.includes(`\`${name}\``) && line.replace(`\`${name}\``, '').split(/\s+/).length > 4
			)
	);
}

/** Folders of the routes that hold a page or an answer and are not named in the text. */
export function unmappedRoutes(paths: readonly string[], text: string): string[] {
	const routes = paths
		.filter((path) => /\/\+(page\.svelte|page\.server\.ts|server\.ts)$/.test(path))
		.map((path) => path.replace(/^src\/routes/, '').replace(/\/[^/]+$/, '') || '/');
	return [...new Set(routes)].filter((route) => !text.includes(`\`${route}\``));
}
