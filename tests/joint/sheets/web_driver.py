"""A browser without a window, driven over the WebDriver protocol (W3C) by plain HTTP."""

import base64
import json
import socket
import subprocess
import time
import urllib.error
import urllib.request

ELEMENT = "element-6066-11e4-a52e-4f735466cecf"  # the protocol's name of an element
KEYS = {"Tab": "\ue004", "Enter": "\ue007", "Space": " ", "Left": "\ue012", "Up": "\ue013",
        "Right": "\ue014", "Down": "\ue015", "Home": "\ue011", "End": "\ue010",
        "PageDown": "\ue00f", "Backspace": "\ue003", "Shift": "\ue008"}


class Browser:
    """Debian's chromium, with what its console and its network say kept."""

    def __init__(self, downloads, width=1280, height=900):
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            port = free.getsockname()[1]
        self.base = f"http://127.0.0.1:{port}"
        self.driver = subprocess.Popen(["chromedriver", f"--port={port}"],
                                       stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        try:
            self._wait_for_driver()
            self._open(downloads, width, height)
        except BaseException:
            self.driver.kill()
            raise

    def _wait_for_driver(self):
        for _ in range(200):
            try:
                if self._ask("GET", "/status")["ready"]:
                    return
            except (urllib.error.URLError, ConnectionError):
                pass
            time.sleep(0.05)
        raise RuntimeError("chromedriver does not answer")

    def _open(self, downloads, width, height):
        options = {
            "args": ["--headless=new", "--no-sandbox", "--disable-gpu",
                     "--disable-dev-shm-usage", "--hide-scrollbars",
                     "--force-prefers-reduced-motion",
                     f"--window-size={width},{height}"],
            "prefs": {"download.default_directory": str(downloads),
                      "download.prompt_for_download": False}}
        session = self._ask("POST", "/session", {"capabilities": {"alwaysMatch": {
            "browserName": "chrome", "goog:chromeOptions": options,
            "goog:loggingPrefs": {"browser": "ALL", "performance": "ALL"}}}})
        self.base += "/session/" + session["sessionId"]

    def _ask(self, method, path, body=None):
        data = None if body is None else json.dumps(body).encode()
        request = urllib.request.Request(self.base + path, data, method=method, headers={
            "Content-Type": "application/json"})
        try:
            with urllib.request.urlopen(request, timeout=30) as answer:
                return json.load(answer)["value"]
        except urllib.error.HTTPError as error:
            value = json.load(error)["value"]
            raise RuntimeError(f"{path}: {value['error']}: {value['message']}") from None

    def close(self):
        try:
            self._ask("DELETE", "")
        finally:
            self.driver.terminate()
            self.driver.wait(10)

    def go(self, url):
        # by way of an empty page: another fragment alone would not load the page again
        self._ask("POST", "/url", {"url": "about:blank"})
        self._ask("POST", "/url", {"url": url})

    def run(self, script, *arguments):
        """What a script returns; it is the body of a function."""
        return self._ask("POST", "/execute/sync", {"script": script, "args": list(arguments)})

    def find(self, selector):
        return self._ask("POST", "/element", {"using": "css selector", "value": selector})[ELEMENT]

    def click(self, selector):
        element = self.find(selector)
        self.run("arguments[0].scrollIntoView({block: 'center', inline: 'center'})", {ELEMENT: element})
        self._ask("POST", f"/element/{element}/click", {})

    def type(self, selector, text):
        element = self.find(selector)
        if self.run("return arguments[0].type !== 'file'", {ELEMENT: element}):
            self._ask("POST", f"/element/{element}/clear", {})
        self._ask("POST", f"/element/{element}/value", {"text": text})

    def press(self, *names):
        """Presses keys one after the other, wherever the focus is."""
        actions = []
        for name in names:
            shifted = name.startswith("Shift+")
            key = KEYS.get(name.removeprefix("Shift+"), name)
            down = [{"type": "keyDown", "value": key}, {"type": "keyUp", "value": key}]
            if shifted:
                down = [{"type": "keyDown", "value": KEYS["Shift"]}, *down,
                        {"type": "keyUp", "value": KEYS["Shift"]}]
            actions += down
        self._ask("POST", "/actions", {"actions": [
            {"type": "key", "id": "keyboard", "actions": actions}]})

    def log(self, kind):
        """What was said since it was last asked for: "browser" or "performance"."""
        return self._ask("POST", "/se/log", {"type": kind})

    def print(self):
        """The page as PDF, as it prints by its own rules for paper."""
        return base64.b64decode(self._ask("POST", "/goog/cdp/execute", {
            "cmd": "Page.printToPDF",
            "params": {"preferCSSPageSize": True, "printBackground": False}})["data"])
