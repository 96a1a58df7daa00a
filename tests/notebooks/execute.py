"""Executes the cells of a notebook with the kernel `deno`, and prints what each shows as JSON.

Cells come as JSON in a file: `[{"source": "...", "shows": true}]`. The kernel may send a result after it
has said that the cell is done: a cell that shows something is waited for until it does, so that no result is lost.
"""

import json
import queue
import sys
import time

from jupyter_client.manager import start_new_kernel

PATIENCE = 120  # seconds for one cell
SHOWN = ("stream", "display_data", "execute_result", "error")


def execute(client, source, shows):
    """What the cell shows, as pairs of message type and content."""
    request = client.execute(source)
    deadline = time.monotonic() + PATIENCE
    idle = False
    shown = []
    while not idle or (shows and not shown):
        try:
            message = client.get_iopub_msg(timeout=max(0.1, deadline - time.monotonic()))
        except queue.Empty:
            sys.exit(f"no {'result' if idle else 'end'} after {PATIENCE} s of the cell\n{source}")
        if message["parent_header"].get("msg_id") != request:
            continue
        kind, content = message["msg_type"], message["content"]
        if kind == "error":
            sys.exit(f"{content['ename']}: {content['evalue']}\nin the cell\n{source}")
        if kind in SHOWN:
            shown.append([kind, content])
        idle = idle or (kind == "status" and content["execution_state"] == "idle")
    return shown


with open(sys.argv[2], encoding="utf-8") as file:
    cells = json.load(file)

manager, client = start_new_kernel(startup_timeout=60, kernel_name="deno", cwd=sys.argv[1])
try:
    print(json.dumps([execute(client, cell["source"], cell["shows"]) for cell in cells]))
finally:
    client.stop_channels()
    manager.shutdown_kernel(now=True)
