import { everyCoach, rule, type Walls } from './wall.ts';

const coaches = everyCoach('404');
const joins = () => ({ name: 'Mei-Lin', agree: 'yes' });

/**
 * The same tablet while it is shared for Odile's group, in everybody's hands. Whoever holds it knows
 * the group, and nothing of who is in it; a coach who signs in on it finds it shared no more.
 */
export const tabletWalls: Walls = {
	'/tablet/[group]': {
		page: rule(['runner'], 'done', {})({ byLink: true }),
		// Whoever is signed in has to be cleared first; a made-up code opens nothing.
		'?/back': rule(['runner'], 'to /tablet/[group]', { nobody: '400', ...coaches })({
			sends: () => ({ code: 'AAAA1111' }),
			byLink: true
		}),
		'?/join': rule(['runner'], 'done', { nobody: 'to /tablet/[group]', ...coaches })({
			sends: joins,
			byLink: true
		}),
		// Leaving is for whoever came back by their code; a runner of a phone is led to the page.
		'?/leave': rule([], 'to /tablet/[group]', { ...coaches })({
			sends: () => ({ code: 'AAAA1111' }),
			byLink: true
		}),
		'?/clear': rule(['runner'], 'done', { nobody: 'to /tablet/[group]/done', ...coaches })({
			byLink: true
		}),
		'?/off': rule(['runner'], 'done', { nobody: 'to /tablet/[group]', ...coaches })({
			byLink: true
		})
	},
	'/tablet/[group]/done': { page: rule([], 'done', {})({ byLink: true }) }
};
