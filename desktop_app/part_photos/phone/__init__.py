"""The phone in the bay: a page that a phone's browser opens, and the tray that its photos come to.

`phone_server` listens, while it is wanted, on the one address that was chosen; `visit` answers one
request; `door` says who may come in; `session` is what window and server share; `in_tray` keeps
what came until the window has given it a place.
"""
