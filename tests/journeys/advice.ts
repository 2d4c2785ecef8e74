import { todayIn } from './days.ts';
import type { Fields, Phone } from './phone.ts';

/** Advice of today from a doctor that lifts all limits, but for what is said otherwise. */
export const recordAdvice = (phone: Phone, said: Fields) =>
	phone.send('/screening/advice?/record', {
		givenOn: todayIn('UTC'),
		role: 'doctor',
		scope: 'all',
		limitBpm: '',
		...said
	});
