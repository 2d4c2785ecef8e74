import type { EditorState } from './editor-state.svelte.ts';

/** What the keyboard does in the editor, beside its buttons: settles a field, undoes and redoes. */
export function editorKeys(event: KeyboardEvent, form: HTMLElement, editor: EditorState): void {
	const { target, ctrlKey, metaKey, shiftKey } = event;
	if (target !== document.body && !(target instanceof Node && form.contains(target))) return;
	const isField = target instanceof HTMLInputElement && target.type === 'text';
	// Enter in a field settles what is typed; the outing is kept by its own button.
	if (event.key === 'Enter' && isField) {
		event.preventDefault();
		target.dispatchEvent(new Event('change', { bubbles: true }));
	}
	// In a field, undo belongs to what is typed there.
	if (isField || !(ctrlKey || metaKey)) return;
	const key = event.key.toLowerCase();
	if (key === 'y' || (key === 'z' && shiftKey)) editor.redo();
	else if (key === 'z') editor.undo();
	else return;
	event.preventDefault();
}
