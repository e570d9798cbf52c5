// Finds and narrows without leaving the page; without this script the same form asks the studio.
const find = document.querySelector('.find');
if (find) {
  const seek = document.getElementById('seek');
  const none = document.getElementById('none');
  const boards = [...document.querySelectorAll('.kind')];
  const whole = !new URL(location.href).searchParams.get('seek') && !new URL(location.href).searchParams.get('sort');
  const show = () => {
    const words = seek.value.trim().toLowerCase().split(/\s+/);
    const sort = find.querySelector('[name=sort]:checked').value;
    let any = false;
    for (const board of boards) {
      let some = false;
      for (const lot of board.querySelectorAll('.lot')) {
        const text = `${lot.textContent} ${lot.dataset.search}`.toLowerCase();
        lot.hidden = !words.every(word => text.includes(word));
        some ||= !lot.hidden;
      }
      board.hidden = !some || (sort !== '' && board.dataset.kind !== sort);
      any ||= !board.hidden;
    }
    none.hidden = any;
  };
  if (whole) {
    // Everything stands on the page, so that looking needs no other one.
    find.classList.add('is-live');
    seek.addEventListener('input', show);
    find.addEventListener('change', show);
    find.addEventListener('submit', event => event.preventDefault());
    show(); // a browser that goes back keeps what was typed
  } else {
    find.addEventListener('change', event => { if (event.target.name === 'sort') find.requestSubmit(); });
  }
}
