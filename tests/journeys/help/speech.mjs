// A platform that speaks, without a sound: what it was told to say, and when it was hushed.

/** Gives a browser window voices for these languages, before any page of it opens. */
export async function speaking(context, ...languages) {
  await context.addInitScript((languages) => {
    const queue = [];
    const heard = [];
    const speech = Object.assign(new EventTarget(), {
      getVoices: () => languages.map((lang) => ({ lang, name: lang, voiceURI: lang, localService: true, default: false })),
      speak(words) {
        queue.push(words);
        heard.push(words.text);
        heard.language = words.lang;
      },
      cancel: () => void queue.splice(0),
    });
    Object.defineProperty(window, "speechSynthesis", { value: speech, configurable: true });
    window.SpeechSynthesisUtterance = class {
      constructor(text) {
        this.text = text;
      }
    };
    window.speechOfTest = {
      queue: () => queue.map(({ text }) => text),
      said: () => ({ heard: heard.splice(0), language: heard.language }),
      /** What is being said comes to its end. */
      end: () => queue.shift()?.onend?.(),
    };
  }, languages);
}

/** What was told to be said since it was asked last. */
export const said = (page) => page.evaluate(() => window.speechOfTest.said().heard);
export const saidIn = (page) => page.evaluate(() => window.speechOfTest.said().language);
/** What is still to be said. */
export const queued = (page) => page.evaluate(() => window.speechOfTest.queue());
export const ends = (page) => page.evaluate(() => window.speechOfTest.end());
