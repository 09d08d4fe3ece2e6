// The pages work without this script. With it a tick needs no reload, survives a lost connection,
// shows on every device within a second, and every action has a key.
'use strict';
(() => {
  const QUEUE = 'lowfirst-waiting';
  const body = () => document.body;
  let here = location.href;
  let stale = false;
  let sending = false;

  // --- what was not acknowledged yet: kept over a reload, sent again in order, with the same id ---
  const waiting = () => {
    try {
      return JSON.parse(localStorage.getItem(QUEUE)) || [];
    } catch (unreadable) {
      return [];
    }
  };
  const keep = (list) => localStorage.setItem(QUEUE, JSON.stringify(list));

  const tellWaiting = (why) => {
    const note = document.getElementById('waiting');
    if (!note) return;
    const count = waiting().length;
    note.hidden = count === 0;
    note.textContent = count === 0 ? '' :
      'Not recorded yet: ' + count + (count === 1 ? ' entry. ' : ' entries. ') + (why || 'Trying again…');
  };

  const later = (milliseconds) => new Promise((done) => setTimeout(done, milliseconds));

  async function sendWaiting() {
    if (sending) return;
    sending = true;
    try {
      for (let list = waiting(); list.length > 0; list = waiting()) {
        const entry = list[0];
        let answer;
        try {
          answer = await fetch(entry.to, {
            method: 'POST',
            body: entry.fields,
            headers: {'Content-Type': 'application/x-www-form-urlencoded'},
          });
        } catch (unreachable) {
          tellWaiting('The bench can’t be reached. Trying again…');
          await later(1000);
          continue;
        }
        if (answer.status >= 500) {
          tellWaiting(await answer.text());
          await later(2000);
          continue;
        }
        const page = await answer.text();
        keep(waiting().slice(1));
        if (waiting().length === 0) show(page, answer.url, true);
      }
    } finally {
      sending = false;
      tellWaiting();
    }
  }

  function submit(form, button) {
    const fields = new URLSearchParams(new FormData(form));
    if (button && button.name) fields.append(button.name, button.value);
    keep(waiting().concat([{to: form.getAttribute('action'), fields: fields.toString()}]));
    sendWaiting();
  }

  // --- changing the page without losing the place ---
  function show(text, address, fresh) {
    const next = new DOMParser().parseFromString(text, 'text/html');
    if (!next.getElementById('main')) return;
    const active = document.activeElement && document.activeElement.id;
    document.title = next.title;
    document.getElementById('dark').media = next.getElementById('dark').media;
    document.body.replaceWith(document.adoptNode(next.body));
    if (fresh) {
      const url = new URL(address);
      if (url.href !== here) history.pushState(null, '', url.href);
      here = url.href;
      const first = document.querySelector('[data-first]') || document.getElementById('task');
      if (first) first.focus({preventScroll: true});
      scrollTo(0, 0);
      if (body().dataset.voice === 'on') speak();
    } else if (active) {
      const same = document.getElementById(active);
      if (same) same.focus({preventScroll: true});
    }
    stale = false;
    tellWaiting();
    arrived();
  }

  async function go(address, fresh) {
    try {
      const answer = await fetch(address, {headers: {'Accept': 'text/html'}});
      show(await answer.text(), answer.url, fresh);
      tellNews();
    } catch (unreachable) {
      if (fresh) location.assign(address);
    }
  }

  const busy = () => {
    const active = document.activeElement;
    const typing = active && /^(INPUT|SELECT|TEXTAREA)$/.test(active.tagName);
    const typed = [...document.querySelectorAll('main input:not([type=hidden])')].some((field) => field.value !== field.defaultValue);
    return typing || typed || document.querySelector('details[open]') !== null || waiting().length > 0;
  };

  function refresh() {
    if (busy()) {
      stale = true;
    } else {
      const said = document.getElementById('said').textContent;
      const url = new URL(here);
      url.searchParams.delete('did');
      go(url.href, false).then(() => {
        const line = document.getElementById('said');
        if (line && line.textContent === '') line.textContent = said;
      });
    }
  }
  document.addEventListener('focusout', () => setTimeout(() => stale && refresh(), 200));

  // --- what others record ---
  let news;
  function tellNews() {
    if (document.body.classList.contains('pair')) return;
    if (news && news.readyState !== EventSource.CLOSED) return;
    news = new EventSource('/news?seen=' + body().dataset.sequence);
    news.addEventListener('message', (event) => {
      if (Number(event.data) > Number(body().dataset.sequence)) refresh();
    });
    news.addEventListener('open', () => sendWaiting());
    news.addEventListener('error', () => setTimeout(tellNews, 1000));
  }

  // --- clicks and forms ---
  document.addEventListener('click', (event) => {
    const link = event.target.closest('a[href]');
    if (link && link.origin === location.origin && !link.hash && !event.ctrlKey && !event.metaKey && !event.shiftKey) {
      event.preventDefault();
      go(link.href, true);
    }
    if (event.target.closest('#aloud')) speak();
  });
  document.addEventListener('submit', (event) => {
    const form = event.target;
    // Asked of the attribute: a field called "action" hides the property of the form.
    const action = form.getAttribute('action');
    if (action === '/pair' || action === '/device') return;
    event.preventDefault();
    if (form.getAttribute('method') === 'post') {
      submit(form, event.submitter);
    } else if (!form.classList.contains('meter')) {
      go(action + '?' + new URLSearchParams(new FormData(form)), true);
    }
  });
  addEventListener('popstate', () => {
    here = location.href;
    go(here, false);
  });

  // --- a meter reading, or another part, is judged while it is typed ---
  let turn = 0;
  async function judge(question, output, empty) {
    const mine = ++turn;
    await later(150);
    if (mine !== turn) return;
    try {
      const answer = question ? await fetch(question) : null;
      const [kind, words] = answer && answer.ok ? (await answer.text()).split('\n') : ['', empty];
      if (mine === turn) {
        output.className = kind;
        output.textContent = words;
      }
    } catch (unreachable) {
      output.textContent = '';
    }
  }
  document.addEventListener('input', (event) => {
    const typed = event.target.value;
    if (event.target.id === 'reading') {
      const step = document.querySelector('.meter [name=step]').value;
      const question = '/meter?' + new URLSearchParams({step: step, measured: typed});
      judge(typed.trim() && question, document.getElementById('verdict'), '');
    } else if (event.target.id === 'other-fitted') {
      const spot = event.target.form.querySelector('[name=spot]').value;
      const question = '/fits?' + new URLSearchParams({spot: spot, fitted: typed});
      judge(typed.trim() && question, document.getElementById('fits'), '');
    }
  });

  // --- keys and foot switch ---
  const due = () => document.querySelector('.control.next');
  document.addEventListener('keydown', (event) => {
    const active = document.activeElement;
    if (active && active.id === 'pedal' && event.key !== 'Tab') {
      active.value = event.key;
      event.preventDefault();
      return;
    }
    if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return;
    const typing = active && /^(INPUT|SELECT|TEXTAREA)$/.test(active.tagName);
    const pedal = body().dataset.pedal;
    if (pedal && event.key === pedal && !typing) {
      press(event, due());
      return;
    }
    if (event.key === 'Escape') {
      document.querySelectorAll('details[open]').forEach((open) => {
        open.open = false;
        open.querySelector('summary').focus();
      });
      if (typing) active.blur();
      return;
    }
    if (typing && active.id === 'reading' && event.key === 'Enter') {
      active.blur();
      event.preventDefault();
      return;
    }
    const neutral = !active || active === document.body || active.id === 'task' || active.id === 'main';
    if (event.key === 'Enter' && neutral) {
      press(event, due());
      return;
    }
    if (typing || body().dataset.keys === 'off') return;
    if (document.querySelector('details[open]')) return;
    const target = [...document.querySelectorAll('[data-key]')].find((one) => one.dataset.key === event.key);
    if (target) press(event, target);
  });
  function press(event, target) {
    if (!target) return;
    event.preventDefault();
    if (target.tagName === 'DETAILS') {
      target.open = true;
      const field = target.querySelector('.reasons button, input:not([type=hidden])');
      if (field) field.focus();
    } else if (target.tagName === 'INPUT') {
      target.focus();
    } else {
      target.click();
    }
  }

  // --- voice and screen ---
  function speak() {
    const mat = document.querySelector('[data-spoken]');
    if (!mat || !('speechSynthesis' in window)) return;
    speechSynthesis.cancel();
    const words = new SpeechSynthesisUtterance(mat.dataset.spoken);
    words.lang = 'en';
    speechSynthesis.speak(words);
  }
  async function stayAwake() {
    const note = document.getElementById('awake');
    if (!('wakeLock' in navigator)) {
      if (note) note.textContent = 'This browser keeps the screen on only at the computer that serves the page. Set the screen of this device to stay on for an hour.';
      return;
    }
    try {
      if (document.visibilityState === 'visible') await navigator.wakeLock.request('screen');
    } catch (refused) {
      if (note) note.textContent = 'This browser does not let a page keep the screen on now, perhaps to save the battery.';
    }
  }
  document.addEventListener('visibilitychange', stayAwake);

  function arrived() {
    const aloud = document.getElementById('aloud');
    if (aloud) aloud.hidden = !('speechSynthesis' in window);
  }
  arrived();
  tellWaiting();
  tellNews();
  sendWaiting();
  stayAwake();
  const first = document.querySelector('[data-first]');
  if (first) first.focus();
})();
