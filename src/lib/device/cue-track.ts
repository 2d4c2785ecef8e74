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
	readonly #audio = new Audio();
	#url: string | null = null;

	constructor(
		readonly name: string,
		controls: Controls
	) {
		if (!('mediaSession' in navigator)) return;
		navigator.mediaSession.setActionHandler('play', controls.play);
		navigator.mediaSession.setActionHandler('pause', controls.pause);
	}

	/** From the beginning of a new sound. */
	async begin(wav: Blob, title: string): Promise<void> {
		this.#forgetSound();
		this.#url = URL.createObjectURL(wav);
		this.#audio.src = this.#url;
		this.say(title);
		try {
			await this.#audio.play();
			this.isPlaying = true;
		} catch {
			this.isPlaying = false;
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
