import { computed, type ReadonlySignal, signal } from '@preact/signals';

const supported = 'speechSynthesis' in window;

/** Voices come in late on many phones. */
const voices = signal<readonly SpeechSynthesisVoice[]>(supported ? speechSynthesis.getVoices() : []);
if (supported) {
  speechSynthesis.addEventListener?.('voiceschanged', () => {
    voices.value = speechSynthesis.getVoices();
  });
}

/** Only a voice that lives on the phone: another one would send what is said over the network, or stay silent. */
const offlineVoice = computed(() => {
  const own = voices.value.filter((v) => v.localService && v.lang.toLowerCase().startsWith('en'));
  return own.find((v) => v.default) ?? own[0];
});

/** Whether this phone can say it aloud with no network. */
export const canSpeak: ReadonlySignal<boolean> = computed(() => offlineVoice.value !== undefined);

/** Says one sentence; a newer one takes its place. */
export function speak(sentence: string): void {
  const voice = offlineVoice.value;
  if (!voice) return;
  speechSynthesis.cancel();
  const said = new SpeechSynthesisUtterance(sentence);
  said.voice = voice;
  said.lang = voice.lang;
  said.volume = 1;
  speechSynthesis.speak(said);
}
