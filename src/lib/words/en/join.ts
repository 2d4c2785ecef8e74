import { tabletStrip } from './head.ts';
import { and } from './lists.ts';

/** What a coach sees of a runner who joins, in the words of the consent. */
const sees = [
	'Your name, as you type it, and the day on which you joined.',
	'What you may do: “may run”, “may run, by talk”, “may walk” or “not today”. “Not today” is the same for every reason.',
	'Or why no result counts. It says “not finished” before your first result. It says “answer again” when your health or plan or the questions changed, or the result ended.',
	'Whether pulse numbers are on or off for you, never why.',
	'Your bands, in beats a minute, by feel and in speeds; from a speed, how fit you are can be worked out. Your coach can move them, within what your result allows, and write you a note. Where pulse is on, whether a limit from your care team ends a band. From the beats somebody who does the sums could work out about how old you are, and your resting pulse.',
	'Where pulse is on, what your pulse is expected to do in an outing, and how much air you use at most, as far as it is known.',
	'That a gentler band counts for you, if one was set outside this group. It tells that you are in another group too, and not in which.',
	'At which outing of a programme you stand, and who set that.',
	'Until when you are settling in, how long your runs may be in the weeks after it, and the last day of your result.',
	'If you write down advice: its day and what it allows. Not what it is about, and not who gave it.',
	'When you say that a band feels wrong, and the days on which you were there or did the group’s outing with your phone.',
	'Your emergency contact, if you give one, and only while an outing is on.'
];

export const join = {
	title: 'Join a group',
	heading: (group: string) => `Join ${group}`,
	with: (coaches: string) => `With ${coaches}.`,
	and,
	at: (place: string) => `Usual place: ${place}.`,
	madeUp: 'This group is made up. Nobody in it is real.',
	seesTitle: 'What your coach will see',
	sees,
	seesNot:
		'No page shows your coach your answers, your reasons, your age or your resting pulse. Other runners see nothing of you.',
	howLong:
		'You can take this back on your account page at any time, and leave the group. Your coach then sees your name and nothing more, at once. When you have left, only a bare list of who was there on which day stays with the group.',
	wayOut:
		'You do not have to. If you would rather not, talk with your coach about another way, without this app.',
	first: 'First the questions',
	firstText:
		'Before you join, you answer the first questions: about five minutes, no e-mail. Then this page comes back to you. It works for seven days on this phone.',
	firstGo: 'Answer the first questions',
	another: 'I have used this on another phone',
	name: 'Your name',
	nameHint: 'As your coach knows you.',
	box: 'I agree that the coaches of this group see what stands above.',
	boxIssue: 'Tick the box if you agree. Without it you cannot join here.',
	go: 'Join the group',
	inIt: (name: string) => `You are in this group, as ${name}.`,
	sharing: 'Its coaches see what stands below.',
	notSharing: 'You share nothing with its coaches at the moment. You can share again here.',
	toAccount: 'Your groups, on your account page',
	done: (group: string) => `You are in ${group}`,
	doneText:
		'Your coach sees your name now. Next: your own bands, and someone to call if you need help.',
	toBands: 'See my bands',
	toResult: 'See my result',
	toContact: 'Say whom to call',
	forCoach:
		'You are signed in as a coach. A runner opens this link on their own phone, where nobody is signed in as a coach.',
	ended: {
		title: 'This link no longer works',
		text: 'It has ended, or was taken back. Ask your coach for a new one. If you joined before, you are still in the group.',
		first: 'You can answer the questions before you have it.',
		go: 'To the questions',
		help: 'The link should work'
	},
	fromResult: (group: string) => `You were on the way into ${group}.`,
	fromResultGo: 'Go on and join',
	isBack: (group: string) => `You are in ${group} already.`,
	isBackGo: 'Go on, and clear this tablet',
	isBackNext: 'Your coach sees what you may do now, and no reason.',
	isBackWhy: 'A reason above is yours to tell or to keep. Ask a doctor about it if you can.',
	issues: {
		missing: 'Type your name.',
		'too-long': 'Use at most 60 characters.',
		'not-a-name': 'Type your name with letters.'
	} as Record<string, string>
};

export const tablet = {
	title: tabletStrip.title,
	heading: (group: string) => `${group}: your turn`,
	lead: 'You answer the first questions, see your result, and join the group. Then everything of yours is wiped from this tablet.',
	begin: 'Begin',
	backTitle: 'You were here before',
	backText:
		'Type the code that you wrote down. You answer again as the same person, or leave the group. You see nothing from before. Your last result ends with your first answer.',
	backCode: 'Your code',
	backHint: 'Eight letters and numbers.',
	backGo: 'Answer again',
	backLost: 'Without the code, begin as new and tell your coach.',
	backIssues: {
		missing: 'Type your code.',
		wrong: 'This code does not work on this tablet. Look at it again, or begin as new.',
		'too-many': 'Too many codes were tried here. Wait an hour, or begin as new.'
	} as Record<string, string>,
	codeTitle: 'Write this down',
	codeText: (code: string) => `Your code to answer again: ${code}`,
	codeMore: [
		'With it you can answer again on this group’s tablet, when your health or your plan changes, and when your result ends. You can also leave the group with it. It shows nothing of you.',
		'It is shown this once. Keep it to yourself, on paper.'
	],
	codeGo: 'I have it: next person',
	somebody: 'Somebody has not finished here.',
	goOn: 'That is me: go on',
	clear: 'That is not me: clear it',
	outTitle: 'Leave the group',
	outText:
		'Your coach sees nothing more of you, at once, but for the bare list of who was there on which day. If you do not use a phone of your own here, all that is kept of you is deleted. It cannot be brought back.',
	outHint: 'Once more, so that nobody else does it for you.',
	outGo: 'Leave, and clear this tablet',
	noResult: 'Answer the questions first. Then you can join.',
	noResultBack: 'Answer the questions first, to the end.',
	backDone:
		'Your new result counts. Nothing of you stays on this tablet. Your code works again next time.',
	afterwards: [
		'Nothing of you stays on this tablet. Your answers are deleted; your result stays with the group, locked.',
		'To see your bands on a phone of your own later, make a code on the account page first and type it there within ten minutes.',
		'Once you have joined you get a code on paper. It lets you answer again here or leave the group, and shows nothing of you. When you leave, or your coach takes you off the list, all of it is deleted, unless you use a phone of your own.',
		'Who looked at what of yours is listed on the account page. For that you need a phone of your own.'
	],
	toAccount: 'Make a code for my own phone',
	joinGo: 'Join, and clear this tablet',
	leaveGo: 'Do not join; clear this tablet',
	inIt: (name: string) => `You are in the group, as ${name}.`,
	doneGo: 'Clear this tablet',
	done: 'Done: hand the tablet back',
	left: 'You have left the group.',
	doneText: 'Everything of yours is wiped from this tablet.',
	next: 'Next person',
	off: 'Stop sharing this tablet',
	offText: 'For the coach: sign in again afterwards.',
	notShared: {
		title: 'This tablet is not shared right now',
		text: 'A coach turns it on, on the page where runners are invited. It ends by itself after twelve hours.',
		go: 'Coach: sign in'
	}
};

export const myGroups = {
	title: 'Your groups',
	none: 'You are in no group. Your coach gives you a link.',
	row: (name: string, since: string) => `You are in it as ${name}, since ${since}.`,
	coaches: (names: string) => `Its coaches: ${names}.`,
	shared: (since: string) => `They see your result, since ${since}.`,
	notShared: 'They do not see your result.',
	share: 'Let them see it',
	stop: 'Stop sharing',
	leave: 'Leave',
	ofGroup: (what: string, group: string) => `${what}: ${group}`,
	leaveText:
		'When you leave, they see nothing more, at once. A bare list of the days on which you were there stays with the group. When you stop sharing, they see your name and nothing more.',
	seesTitle: 'What a coach sees while you share',
	contactTitle: 'Whom to call for you',
	contactText:
		'Your coach sees this only while an outing is on, and only if you share. Each look is listed below. Tell this person that you gave their number.',
	contactName: 'Their name',
	contactPhone: 'Their number',
	contactRelation: 'Who they are to you',
	contactRelationHint: 'Such as sister, or neighbour. It may stay empty.',
	contactSave: 'Keep this contact',
	contactRemove: 'Remove this contact',
	readTitle: 'Who looked',
	readNone: 'No coach has looked at anything of yours.',
	readRow: (when: string, who: string, group: string, what: string) =>
		`${when}: ${who} (${group}) ${what}`,
	readAgain: (times: number, last: string) => `, ${times} times that day, last at ${last}`,
	readWhat: {
		result: 'saw what you may do',
		bands: 'saw your bands',
		contact: 'saw whom to call for you'
	} as Record<string, string>,
	readEarlier: (count: number) => `And ${count} before that. All of them are in your data file.`,
	issues: {
		missing: 'Fill this in.',
		'too-long': 'Make it shorter.',
		'not-a-name': 'Type a name with letters.',
		'not-a-number': 'Type the number to call: 2 to 15 digits, no letters.'
	} as Record<string, string>
};
