/** Says a text in the browser's own voice, in place of what it was saying. Silent where it has none. */
export function say(text: string, language: string): void {
	if (!('speechSynthesis' in globalThis)) return;
	speechSynthesis.cancel();
	const words = new SpeechSynthesisUtterance(text);
	words.lang = language;
	speechSynthesis.speak(words);
}
