/// <reference types="web-bluetooth" />
import type { SignedInCoach } from '$lib/server/coaches.ts';
import type { Demo } from '$lib/server/demo/demo.ts';
import type { House } from '$lib/server/open-house.ts';
import type { Signed } from '$lib/server/auth.ts';
import type { TabletReturn } from '$lib/server/tablet-returns.ts';

declare global {
	namespace App {
		interface Error {
			/** Looked up in the words; never a message made from data. */
			code: string;
			/** Shown to the person and logged beside the stack, so that the two can be matched. */
			id?: string;
			message: string;
		}

		interface PageData {
			/** The group whose pages these are, on the coach's desk. */
			desk?: {
				readonly id: string;
				readonly name: string;
				readonly isDemo: boolean;
				/** Without an emergency number no outing starts or reaches a phone. */
				readonly hasNumber: boolean;
				readonly isOwner: boolean;
			};
		}

		interface Locals {
			house: House;
			/** The runner who asks, or null for a coach and for somebody without an account. */
			runner: Signed | null;
			/** Set where the runner answers again on a shared tablet: nothing from before is shown. */
			tabletReturn: TabletReturn | null;
			/** The coach who asks, or null for everybody else. Never set beside a runner. */
			coach: SignedInCoach | null;
			/** The made-up group, where it is in the house: then everybody in it is made up. */
			demo: Demo | null;
			/** When the request came, epoch milliseconds: one clock for the whole request. */
			now: number;
		}
	}
}

export {};
