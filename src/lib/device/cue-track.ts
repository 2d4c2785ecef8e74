/** How far track and outing may part before the track is moved, in seconds: less is not heard. */
const APART_SECONDS = 0.4;

interface Controls {
	readonly play: () => void;
	readonly pause: () => void;
}

/**
 * The sound of an outing as a track, with the phone's own media controls. Where a browser refuses it,
 * it stays silent and says so.
 */
export class CueTrack {
	/** True while the track sounds, so that nothing else has to. */
	isPlaying = false;
	/** True where the browser refused it, or a call or another app stopped it: a tap lets it sound again. */
	isStopped = false;
	readonly #audio = new Audio();
	#url: string | null = null;

	constructor(
		readonly name: string,
		controls: Controls
	) {
		this.#audio.addEventListener('pause', () => {
			if (!this.isPlaying || !this.#audio.paused || this.#audio.ended) return;
			this.isPlaying = false;
			this.isStopped = true;
		});
		if (!('mediaSession' in navigator)) return;
		navigator.mediaSession.setActionHandler('play', controls.play);
		navigator.mediaSession.setActionHandler('pause', controls.pause);
	}

	/** From the beginning of a new sound. */
	async begin(wav: Blob, title: string): Promise<void> {
		this.pause();
		this.#forgetSound();
		this.#url = URL.createObjectURL(wav);
		this.#audio.src = this.#url;
		this.say(title);
		try {
			await this.#audio.play();
			this.isPlaying = true;
		} catch (refused) {
			// Another sound in its place is no refusal.
			const isReplaced = refused instanceof DOMException && refused.name === 'AbortError';
			if (!isReplaced) this.isStopped = true;
		}
	}

	/** Puts a name on the locked screen. */
	say(title: string): void {
		if (!('mediaSession' in navigator)) return;
		navigator.mediaSession.metadata = new MediaMetadata({ title, artist: this.name });
	}

	/** Keeps it in step with the outing's clock. */
	follow(seconds: number): void {
		const { currentTime, duration } = this.#audio;
		if (!this.isPlaying || !(seconds < duration)) return;
		if (Math.abs(currentTime - seconds) > APART_SECONDS) this.#audio.currentTime = seconds;
	}

	pause(): void {
		this.isPlaying = false;
		this.isStopped = false;
		this.#audio.pause();
	}

	close(): void {
		this.pause();
		this.#forgetSound();
		if (!('mediaSession' in navigator)) return;
		navigator.mediaSession.metadata = null;
		navigator.mediaSession.setActionHandler('play', null);
		navigator.mediaSession.setActionHandler('pause', null);
	}

	#forgetSound(): void {
		if (this.#url !== null) URL.revokeObjectURL(this.#url);
		this.#url = null;
	}
}
