export const privacy = {
	title: 'Privacy',
	lead: 'What Breathmark keeps, for how long, and who can see it.',
	sections: [
		{
			title: 'Your answers',
			text: [
				'They are kept only while the form is open: encrypted, at most 7 days. When you finish, they are deleted.',
				'The urgent question comes before you agree to anything. It stores nothing if you have no account. With one, it keeps that there was a sign, and not which.',
				'No page shows your answers to a coach.'
			]
		},
		{
			title: 'Your result',
			text: [
				'The result keeps what you may do, the reasons, your age, your plan and how active you are. It is stored encrypted. Whoever runs this server could read it.',
				'It counts for twelve months, or until you say that something changed or begin to answer again. It stays in your list until you delete everything.'
			]
		},
		{
			title: 'Your pulses and bands',
			text: [
				'What you guess in the lesson “Guess, then look” is stored encrypted, the newest sixty. You can remove it there.',
				'Resting pulses, your newest walk check and mile walk, and what you tell us about yourself are stored encrypted. Bands are worked out when you look, and not stored.',
				'While you do a walk check or a mile walk, the tab of your browser keeps what you typed until you send it or end it, or close the tab: three hours at most.',
				'If your result turns pulse numbers off, stored pulses are deleted. Everything else stays until you delete it. An account that no phone and no passkey can open any more, and that is in no group, is deleted within a day or so.'
			]
		},
		{
			title: 'Your outings',
			text: [
				'What your phone writes down in an outing is sent here and stored encrypted. It holds the parts that you did and what you said of talk, effort and pain. It also holds the speed that you used, your pulse where it was measured, and that something felt wrong.',
				'You can delete one on its page. When an outing is only a walk, its day is kept as a walk too, and goes with it. The last pain that you told is kept by itself, because it stops runs until you say that it is gone.',
				'No page shows a coach what you said in an outing, your effort, your speed or your pulse there. They see the day on which you did an outing of the group.'
			]
		},
		{
			title: 'If you join a group',
			text: [
				'You type a name and agree to what its coaches will see: what you may do, until when, and your bands. Never your answers or your reasons. The page says exactly what, before you agree.',
				'No page shows a coach your age, your resting pulse or your maximum. But your bands are worked out from them. A coach who sees your bands in beats, and does the sums, could work out your age to within a few years. Each band that a coach sets for you is written down for you, with their name.',
				'You can stop sharing or leave on your account page; they see nothing more, at once, but your name for as long as you are in the group. Who was there on which day stays with the group, as a bare list of names.',
				'Your account page lists each coach who looked, day by day, how often and when last, for 400 days.',
				'Whom to call for you is stored encrypted. A coach sees it only while an outing is on.',
				'On a shared tablet nothing of you stays on it. If you do not join, everything is deleted at once. If you do, it is deleted when you leave or your coach takes you off the list, unless you use a phone of your own. A code on paper lets you answer again or leave there; it shows nothing of you, and is stored as a mark that cannot be turned back into it.'
			]
		},
		{
			title: 'If you are a coach',
			text: [
				'Kept are your name, your qualification if you give one, your e-mail, your password as a code that cannot be turned back, and the devices on which you are signed in. You can delete them on your account page.',
				'Your runners and the other coaches of a group see your name and qualification. Nobody but you and whoever runs this server sees your e-mail.'
			]
		},
		{
			title: 'Cookies',
			text: [
				'One cookie keeps you signed in on this phone, for up to 400 days after your last visit. Others keep your emergency number, time zone, and light or dark. One keeps for half an hour that you ticked none of the urgent signs. One keeps for seven days an invitation that you opened, one for twelve hours that a tablet is shared, and one for a minute a code that is to be written down. There is no tracking, and nothing is loaded from other companies.',
				'Some browsers drop a site’s data after a week without a visit. A code or a passkey on the account page brings you back.'
			]
		},
		{
			title: 'What the prompter keeps on your phone',
			text: [
				'So that an outing works without a network, your phone keeps your bands and your outings of the next 14 days. They are shown there until your result ends, for 14 days at most after your phone last reached us. There is no age, no answer and no reason among them.',
				'What you do and say in an outing is written down on the phone first, and then sent to your account, where it is stored encrypted. The three questions of the day are not kept. Only “not well” stays on the phone, until the next day.'
			]
		},
		{
			title: 'Your rights',
			text: [
				'You can see, take with you, correct (by answering again) and delete everything on the account page. You can take your agreement back there; your bands close at once.',
				'Copies in backups of this server end when the backups do. The key to them is never in a backup.',
				'Nobody has to use this form. A person, not this form, has the last word.'
			]
		},
		{
			title: 'Who is responsible',
			text: [
				'Whoever runs this server. Ask them about local rules, backups and how long they keep records.'
			]
		}
	]
};
