/** A short text of our own to read aloud while somebody listens for the breath. */
export interface Passage {
	readonly title: string;
	readonly text: string;
}

/**
 * About ninety words each: with 93 words, some 29 seconds of speech, the talk test met the measured
 * thresholds best (Schroeder 2017). A language pack writes its own; it does not translate these.
 */
export const passages: readonly [Passage, ...Passage[]] = [
	{
		title: 'The warm bread',
		text: 'The street is quiet this morning. A cat sits on a wall and looks at me as I go by. The baker has put a sign in her window. It says that the bread is still warm. I can smell it from here. A man walks his old brown dog, and the dog wants to say hello. I give a wave and go on. The sun is low, and my shadow is as long as a bus. When I get home, I will put the kettle on and have some of that bread.'
	},
	{
		title: 'Soup on a rainy day',
		text: 'My aunt makes soup on rainy days. She cuts up carrots, leeks and one small onion. She lets me stir the pot with her big wooden spoon. It takes a long time, but we do not mind. We sit by the window and watch the drops run down the glass. We each pick one drop and see which gets to the end first. Mine is nearly always last. When the soup is done, the kitchen smells of pepper and warm bread. We eat two bowls each. Then the rain stops and we go out.'
	},
	{
		title: 'The green boat',
		text: 'There is a little green boat on the river near my house. Nobody knows whose boat it is. Each spring someone gives it a new coat of paint. Last year it was blue, and before that it was red. Ducks sleep in it when the wind is cold. One day a boy left a note on the seat. The note said, thank you for the boat. The next week there was an answer under a stone. It said, you are welcome, and please look after the ducks. So now he brings them oats.'
	},
	{
		title: 'The goat and the bus',
		text: 'I take the bus to work, and I sit at the front on the top deck. From there I can see into all the gardens. One has a red swing and a pond with fish. One has a goat that stands on its shed. The driver slows down so that we can wave at the goat. Today it had a hat on, and the whole bus laughed. A woman I had never met told me about her own goat. We talked all the way to the last stop. I was late, and glad of it.'
	}
];
