/** A script that is bundled by itself: where it lies, without a slash in front. */
declare module '*?own-script' {
	const path: string;
	export default path;
}
