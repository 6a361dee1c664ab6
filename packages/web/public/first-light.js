// Sets the light before the first paint, so that nothing flashes white at night. The app takes over from here.
(() => {
  try {
    const light = localStorage.getItem('pitwright.light.shown');
    if (light === 'lamp' || light === 'sun') document.documentElement.dataset.theme = light;
  } catch {
    // Storage is closed to us: paper it is.
  }
})();
