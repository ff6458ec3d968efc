"""Trouble with a shop's server: gone for now, or a password that is wanted."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.shop_record.trouble import NotSaved, ShopTrouble


class ServerLost(NotSaved):
    """The server can't be reached now; what is typed stays in its fields and can be sent later."""

    def anew(self) -> ServerLost:
        """Return the same words without the frames that they were raised in.

        Those hold pages of the window, which must not end with whoever lets go of the words.
        """
        return type(self)(self.what, self.kept, self.do, self.again)


class ServerRefuses(ServerLost):
    """The server is there again and lets this login in no more: another password, other rights."""

    @classmethod
    def of(cls, refusal: ShopTrouble) -> ServerRefuses:
        """Return a refusal as what keeps a shop that was open from its server."""
        do = refusal.do
        if isinstance(refusal, PasswordWanted):
            do = tr("Enter the password that holds now under House Rules, “Where this shop is”.")
        return cls(
            tr(
                "The shop's server is there, and lets nobody in from here. {what}",
                what=refusal.what,
            ),
            tr("What you type stays in its field, and on this computer."),
            do,
        )


class PasswordWanted(ShopTrouble):
    """The server wants a password that the keyring has not, or another one than it has."""


class PhotosUnknown(NotSaved):
    """The shared folder of the photos is not named, or this computer does not reach it."""


def server_lost() -> ServerLost:
    """Return what to say while the server can't be reached."""
    return ServerLost(
        tr("The shop's server can't be reached."),
        tr("What you typed is still in its field; nothing was saved."),
        tr("Go on typing: it is sent when the server is back."),
        tr("Try again when the server is back."),
    )


class NotKnown(ServerLost):
    """Nobody confirmed a deed before the server went: that is said of this deed alone."""


def not_known_whether_kept() -> ServerLost:
    """Return what to say where the server went away after everything was sent."""
    return NotKnown(
        tr("The shop's server went away before it answered: it is not known whether it was saved."),
        tr("What you typed is still in its field."),
        tr(
            "Look at the page when the server is back; what stands there by then is what was saved."
        ),
        tr("When the server is back, look into the shop before you try again."),
    )
