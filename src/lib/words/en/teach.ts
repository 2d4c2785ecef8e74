/** For coaches: how to teach the talk test. The plan and the cues are common practice, no source. */
export const teach = {
	title: 'A lesson in ten minutes',
	lead: 'Teach a group to hear its own effort. You need a clock, one text for every two people, and a place to walk.',
	print: 'Print it from the menu of your browser: the plan on one sheet, the texts on the next.',
	beforeTitle: 'Before you begin',
	before: [
		'The walking is for whoever may walk or run by their result, and is well today: ask everybody. All others can hold the clock, listen, and read sitting down.',
		'Say: you can stop at any time, and you never need to give a reason.',
		'Know the emergency number, and where the next defibrillator is.',
		'Pair people who walk at about the same pace.'
	],
	caption: 'The plan, minute by minute',
	columns: { at: 'Minute', what: 'What you do', say: 'What you say' },
	plan: [
		{
			from: 0,
			to: 1,
			what: 'Stand in a ring. Put watches away.',
			say: 'Today your voice is the measure. There is no best and no worst.'
		},
		{
			from: 1,
			to: 2,
			what: 'Pairs read the text aloud, standing still, half each.',
			say: 'Listen to your partner. This is how easy sounds.'
		},
		{
			from: 2,
			to: 4,
			what: 'Everybody walks and chats at an easy pace.',
			say: 'Stay where you could tell a long story.'
		},
		{
			from: 4,
			to: 7,
			what: 'Walk briskly. In the last half minute one of each pair tells a story, the other listens.',
			say: 'Could you speak comfortably? Show the effort with your fingers, 0 to 10.'
		},
		{
			from: 7,
			to: 8,
			what: 'Whoever has a run in their bands may run gently for 20 to 30 seconds. Everybody else walks on. Nobody goes past “with breaths”.',
			say: 'As slow as you like. If you have to stop talking, walk.'
		},
		{
			from: 8,
			to: 9.5,
			what: 'Walk slowly until talk is comfortable again.',
			say: 'Put a hand up when you could chat on the phone.'
		},
		{
			from: 9.5,
			to: 10,
			what: 'Stop together.',
			say: 'Tell your partner one thing that you heard.'
		}
	],
	minute: (from: string, to: string) => `${from}–${to}`,
	hearTitle: 'How to hear it in a voice',
	hearLead:
		'Listen for half a minute. Ask a question that needs a story: “How do you make your soup?” A yes or no tells nothing.',
	hear: {
		comfortable: {
			hear: 'Whole sentences, with a tune in them. Breaths at commas. People laugh, and ask you back.',
			act: 'Leave it as it is.'
		},
		'with-breaths': {
			hear: 'A breath in the middle of a sentence. Shorter sentences, a flatter tone, an answer that comes late.',
			act: 'Early in a run: “a little slower”. In its last third: fine.'
		},
		'broke-off': {
			hear: 'One word, a nod, or nothing. Breath that you hear from beside them.',
			act: 'Walk with them, at once, until they talk again.'
		}
	},
	mind: [
		'Quiet is not the same as out of breath. Some people do not talk; ask for the effort number instead.',
		'A stammer, another first language, or a hearing aid changes how talk sounds. Ask what it is like for them when it is easy.',
		'Somebody who talks well may still feel unwell. A sign to stop counts before everything.',
		'You hear effort. You do not hear what causes it: never say that it is probably nothing.'
	],
	mindTitle: 'Keep in mind',
	texts: 'Texts to read, to cut apart',
	basis:
		'The plan and the cues are common practice, no source. The talk levels and the half minute are from research. Local rules and your insurance decide what you may do.'
};
