"""Little words: those that say nothing of a fault, so that no past job is found by them alone."""

from __future__ import annotations

_FUNCTION_WORDS = """
    a an the this that these those there here theres heres thats whats wheres whos hows its it
    i im ive id ill me my mine myself we were weve well us our ours you youre youve youll your
    yours he hes him his she shes her hers they theyre theyve them their theirs who whom whose
    which what where when whenever wherever why how if then than though although because
    cos cause as so while until till unless whether and or but nor either neither both
    am is are was be been being do does did doing done have has had having having can could
    will would shall should may might must ought cant cannot couldnt wont wouldnt dont doesnt
    didnt isnt arent wasnt werent hasnt havent hadnt shouldnt no not never none without
    at by for from in into of off on onto out over up down to with about above across after
    against along among around before behind below beneath beside besides between beyond
    during except near past since through throughout toward towards under upon via within
    all any anyone anybody each every everyone everybody few less least lot lots many more most
    much other others another own same some someone somebody several such
    again ago almost already also always anyway away even ever fairly finally however instead
    just kind kinda later like maybe mostly now often once only perhaps possibly pretty probably
    quite rather really slightly sometimes somehow soon sort sorta still suddenly therefore too
    twice usually very yet"""
# Verbs, times and greetings that go with any concern.
_SAYING_LITTLE = """
    get gets getting got gotten go goes going gone goin went come comes coming came put puts
    putting take takes taking took taken make makes making made give gives giving gave given let
    lets letting keep keeps keeping kept seem seems seemed want wants wanted need needs needed
    know knows think thinks thought tell tells told say says said saying state states stated
    report reports reported happen happens happening happened try tries tried trying
    thing things something anything everything bit
    today yesterday day days week weeks month months year years time times last
    please hi hello hey thanks thank customer client owner driver wife husband car vehicle
    cars"""

LITTLE_WORDS = frozenset(_FUNCTION_WORDS.split()) | frozenset(_SAYING_LITTLE.split())
